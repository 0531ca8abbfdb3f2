using System.Collections.Immutable;
using Emberwright.Reports.Pictures;

namespace Emberwright.Reports.Pages;

/// <summary>A strip of a page that is never divided: shapes from its own upper left corner, and its height in points.</summary>
/// <param name="Height">Height, pt.</param>
/// <param name="Shapes">Shapes.</param>
/// <param name="KeepWithNext">True for a heading, which may not be the last on its page.</param>
internal sealed record Strip(double Height, ImmutableArray<Shape> Shapes, bool KeepWithNext = false);

/// <summary>An entry of the outline.</summary>
/// <param name="Title">Its words.</param>
/// <param name="Page">Page it is on, from 0.</param>
internal sealed record Bookmark(string Title, int Page);

/// <summary>
/// Fills pages from top to bottom. What does not fit goes on to the next page; nothing is cut or dropped.
/// </summary>
internal sealed class Flow
{
    private readonly PageFormat _format;
    private readonly List<List<Shape>> _pages = [[]];
    private readonly List<Bookmark> _bookmarks = [];

    public Flow(PageFormat format)
    {
        _format = format;
        Y = format.Top;
    }

    /// <summary>Where the next strip goes, pt from the upper edge.</summary>
    public double Y { get; private set; }

    /// <summary>Room left on this page, pt.</summary>
    public double Left => _format.Bottom - Y;

    /// <summary>The pages so far.</summary>
    public IReadOnlyList<IReadOnlyList<Shape>> Pages => _pages;

    /// <summary>The outline so far.</summary>
    public IReadOnlyList<Bookmark> Bookmarks => _bookmarks;

    /// <summary>Starts a page unless this one is empty.</summary>
    public void NewPage()
    {
        if (_pages[^1].Count == 0 && Y <= _format.Top) return;
        _pages.Add([]);
        Y = _format.Top;
    }

    /// <summary>Empty space; none at the top of a page.</summary>
    public void Space(double height)
    {
        if (Y > _format.Top) Y += height;
    }

    /// <summary>Marks this place in the outline.</summary>
    public void Mark(string title) => _bookmarks.Add(new(title, _pages.Count - 1));

    /// <summary>Strips one below the other, over the full measure.</summary>
    public void Put(params IReadOnlyList<Strip> strips) => PutSideBySide((0, strips));

    /// <summary>A table whose head stands again on every page it goes on to.</summary>
    /// <param name="head">Title and head.</param>
    /// <param name="rows">Its rows.</param>
    public void PutTable(IReadOnlyList<Strip> head, IReadOnlyList<Strip> rows)
    {
        if (head.Sum(s => s.Height) + FirstHeight(rows, 0) > Left) NewPage();
        Put(head);
        for (var i = 0; i < rows.Count; i++)
        {
            if (!Fits(rows, i, Y) && rows[i].Height < _format.Bottom - _format.Top)
            {
                NewPage();
                Put(head);
            }

            Put(rows[i]);
        }
    }

    /// <summary>
    /// Columns beside each other, starting level; each goes on by itself where the page ends.
    /// They stay whole when they fit on a page of their own but not on the rest of this one.
    /// </summary>
    public void PutSideBySide(params (double X, IReadOnlyList<Strip> Strips)[] columns) => PutColumns(columns.Length > 1, columns);

    /// <summary>Columns beside each other that start on this page however long they are.</summary>
    public void PutColumns(params (double X, IReadOnlyList<Strip> Strips)[] columns) => PutColumns(false, columns);

    private void PutColumns(bool together, (double X, IReadOnlyList<Strip> Strips)[] columns)
    {
        var tallest = columns.Max(c => c.Strips.Sum(s => s.Height));
        var whole = _format.Bottom - _format.Top;
        var first = columns.Max(c => FirstHeight(c.Strips, 0));
        if (together ? tallest > Left && tallest <= whole : first > Left && first <= whole) NewPage();
        var next = new int[columns.Length];
        while (true)
        {
            var low = Y;
            for (var c = 0; c < columns.Length; c++)
            {
                var y = Y;
                var strips = columns[c].Strips;
                while (next[c] < strips.Count && (Fits(strips, next[c], y) || (y <= _format.Top && strips[next[c]].Height > whole)))
                {
                    var strip = strips[next[c]++];
                    if (strip.Shapes.Length > 0) _pages[^1].Add(new Group(strip.Shapes, _format.Side + columns[c].X, y));
                    y += strip.Height;
                }

                low = Math.Max(low, y);
            }

            Y = low;
            if (columns.Select((c, i) => next[i] >= c.Strips.Count).All(done => done)) return;
            NewPage();
        }
    }

    // Height of a strip and of what it must not be parted from.
    private static double FirstHeight(IReadOnlyList<Strip> strips, int at)
    {
        var height = 0.0;
        for (var i = at; i < strips.Count; i++)
        {
            height += strips[i].Height;
            if (!strips[i].KeepWithNext) break;
        }

        return height;
    }

    // A strip fits together with what it must not be parted from.
    private bool Fits(IReadOnlyList<Strip> strips, int at, double y)
    {
        var need = FirstHeight(strips, at);
        return y + need <= _format.Bottom + 0.01 || (y <= _format.Top && need > _format.Bottom - _format.Top && y + strips[at].Height <= _format.Bottom);
    }
}
