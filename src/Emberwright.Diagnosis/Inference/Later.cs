using System.Collections;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// A list that is worked out when it is first looked at, or before that in slices by whoever has the time. It is not a query:
/// it is worked out once.
/// </summary>
/// <param name="slices">The work; all but the last slice give null.</param>
internal sealed class Later<T>(IEnumerable<IReadOnlyList<T>?> slices) : IReadOnlyList<T>
{
    private IEnumerator<IReadOnlyList<T>?>? _work = slices.GetEnumerator();
    private IReadOnlyList<T> _items = [];

    /// <inheritdoc />
    public int Count => Items.Count;

    /// <inheritdoc />
    public T this[int index] => Items[index];

    private IReadOnlyList<T> Items
    {
        get
        {
            while (Advance())
            {
            }
            return _items;
        }
    }

    /// <summary>Works one slice; false when nothing is left to do.</summary>
    public bool Advance()
    {
        if (_work is null) return false;
        if (_work.MoveNext())
        {
            _items = _work.Current ?? _items;
            return true;
        }
        _work.Dispose();
        _work = null;
        return false;
    }

    /// <inheritdoc />
    public IEnumerator<T> GetEnumerator() => Items.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
