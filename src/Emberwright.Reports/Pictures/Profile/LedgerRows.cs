using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>Under the plot: the names along the way, brackets for the parts, and the ledger in two rows.</summary>
internal sealed class LedgerRows
{
    private const double Measure = 84;
    private readonly ProfileInput _input;
    private readonly Ledger _ledger;
    private readonly ImmutableArray<ImmutableArray<string>> _parts;

    public LedgerRows(ProfileInput input)
    {
        _input = input;
        _ledger = Ledger.From(input);
        _parts = [.. input.Parts.Select(p => Words.Wrap(p, Measure, Roles.Word).ToImmutableArray())];
    }

    /// <summary>Width each part needs for its name and figures, when the room stands at <paramref name="left"/>.</summary>
    public IReadOnlyList<double> Widths(double left)
    {
        var cell = _ledger.Entries.Max(e => Math.Max(Roles.Name.Width(Change(e.Found)), Roles.Word.Width(Change(e.Healthy))));
        var widths = _parts.Select(lines => Math.Max(Math.Max(lines.Max(Roles.Word.Width) + 12, cell + 24), 2 * Columns.Flat + 14)).ToArray();
        widths[0] = Math.Max(widths[0], 2 * (Roles.Word.Width(Say.Of("common.healthy")) + 8 + cell / 2 - left));
        return widths;
    }

    /// <summary>Draws from a height downwards; says how far down it came.</summary>
    public (ImmutableArray<Shape> Shapes, double Bottom) Draw(Columns columns, double y, double right)
    {
        var made = ImmutableArray.CreateBuilder<Shape>();
        made.Add(new Text(new(columns.Room, y), Say.Of("profile.room"), Roles.Word));
        foreach (var (s, i) in _input.Stations.Select((s, i) => (s, i)))
            made.Add(new Text(new(columns[i], y), s.Name, Roles.Name, Anchor.Middle));
        made.Add(new Text(new(right, y), Say.Of("profile.outdoors"), Roles.Word, Anchor.End));

        for (var i = 0; i < _parts.Length; i++)
        {
            double l = columns[i - 1] + (i == 0 ? 0 : 3), r = columns[i] - (i == _parts.Length - 1 ? 0 : 3);
            made.Add(new Polyline([new(l, y + 14), new(l, y + 10), new(r, y + 10), new(r, y + 14)], Roles.Axis));
            for (var line = 0; line < _parts[i].Length; line++)
                made.Add(new Text(new((l + r) / 2, y + 27 + 14 * line), _parts[i][line], Roles.Word, Anchor.Middle));
        }

        var row = y + 34 + 14 * (_parts.Max(p => p.Length) - 1) + 14;
        if (_ledger.Entries[0].Found is not null)
        {
            made.Add(new Text(new(0, row), _input.Moment == Moment.Found ? Say.Of("profile.found") : Say.Of("profile.left"), Roles.Word));
            for (var e = 0; e < _ledger.Entries.Length; e++) DrawEntry(made, columns, _ledger.Entries[e], row, e == _ledger.Odd);
            row += 20;
        }

        made.Add(new Text(new(0, row), Say.Of("common.healthy"), Roles.Word));
        for (var i = 0; i < _parts.Length; i++)
            made.Add(new Text(new((columns[i - 1] + columns[i]) / 2, row), Change(_ledger.Healthy[i]), Roles.Word, Anchor.Middle));
        return (made.ToImmutable(), row + 4);
    }

    private void DrawEntry(ImmutableArray<Shape>.Builder made, Columns columns, LedgerEntry entry, double row, bool odd)
    {
        double l = columns[entry.First - 1], r = columns[entry.Last], middle = (l + r) / 2;
        var words = Change(entry.Found);
        var half = Roles.Name.Width(words) / 2 + 10;
        if (entry.Last > entry.First)
        {
            made.Add(new Line(new(l + 6, row - 4), new(middle - half, row - 4), Roles.Axis));
            made.Add(new Line(new(middle + half, row - 4), new(r - 6, row - 4), Roles.Axis));
        }

        if (odd) made.Add(new Rect(new Box(middle - half, row - 14, 2 * half, 18), Roles.Tag, 2));
        made.Add(new Text(new(middle, row), words, odd ? Roles.TagStrong : Roles.Name, Anchor.Middle));
    }

    private string Change(double? change) => change is { } c ? _input.Unit.Change(c) : "";
}
