using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.Pages;

/// <summary>The report laid out: one scene a page, in points, and the outline.</summary>
/// <param name="Pages">Pages in order.</param>
/// <param name="Bookmarks">Outline.</param>
internal sealed record ReportPages(ImmutableArray<Scene> Pages, ImmutableArray<Bookmark> Bookmarks)
{
    public static ReportPages Lay(ReportInput input, PageFormat format)
    {
        var pictures = ReportPictures.Draw(input);
        // The customer's page is one page. Where its pictures do not fit, they are left to the figures, which say the same.
        int Front(double size, ReportPictures shown)
        {
            var trial = new Flow(format);
            FrontPage.Put(trial, input, shown, format, new FrontType(size));
            return trial.Pages.Count;
        }

        var words = pictures with { Pair = null, Areas = null };
        var onFront = FrontType.Sizes.Any(size => Front(size, pictures) == 1) || FrontType.Sizes.All(size => Front(size, words) > 1) ? pictures : words;
        var front = new FrontType(Largest(FrontType.Sizes, size => Front(size, onFront)));
        // One page of figures where they fit; else what was read, then what follows from it, each with room.
        int FigurePages(double size, bool split)
        {
            var trial = new Flow(format);
            FiguresPage.Put(trial, input, pictures, format, new FigureType(size), split);
            return trial.Pages.Count;
        }

        var split = FigureType.Sizes.All(size => FigurePages(size, false) > 1);
        var figures = new FigureType(Largest(FigureType.Sizes, size => FigurePages(size, split), split ? 2 : 1));
        var flow = new Flow(format);
        FrontPage.Put(flow, input, onFront, format, front);
        if (input.Notice is { } notice) NoticePage.Put(flow, input, notice, format);
        FiguresPage.Put(flow, input, pictures, format, figures, split);
        StovePage.Put(flow, input, format);
        PhotoPages.Put(flow, input, format);
        var count = flow.Pages.Count;
        var pages = flow.Pages.Select((shapes, i) => new Scene(
            $"page{i + 1}", new Box(0, 0, format.Width, format.Height), Say.Of("common.page-of", Title(input), i + 1, count), "",
            [.. shapes, .. Footer(input, format, i, count)]));
        return new([.. pages], [.. flow.Bookmarks]);
    }

    // The largest type that needs no more pages than wanted; when none does, the largest that needs fewest.
    private static double Largest(IReadOnlyList<double> sizes, Func<double, int> pages, int wanted = 1)
    {
        var (best, fewest) = (sizes[0], int.MaxValue);
        foreach (var size in sizes)
        {
            var needed = pages(size);
            if (needed <= wanted) return size;
            if (needed < fewest) (best, fewest) = (size, needed);
        }

        return best;
    }

    /// <summary>The seal as the file carries it; null while there is none to carry.</summary>
    public static PrintedSeal? SealOf(ReportInput input, PageFormat? format) => input is { Seal: { Length: > 0 } hash, Visit: { Length: > 0 } visit }
        ? new(visit, hash, $"{(input.Units == UnitSystem.Us ? "us" : "si")} {(format == PageFormat.A4 ? "a4" : "letter")}")
        : null;

    /// <summary>Title of the document.</summary>
    public static string Title(ReportInput input) => $"{input.Heading}, {input.Address}, {Print.Day(input.At)}";

    private static IEnumerable<Shape> Footer(ReportInput input, PageFormat format, int page, int count)
    {
        var y = format.Height - 30;
        var seal = input.Seal is { Length: >= 12 } s ? Say.Of("common.seal", PrintedSeal.Short(s)) : Say.Of("report.not-sealed");
        var right = Say.Of("report.page-of", page + 1, count, seal);
        yield return new Text(new(format.Width - format.Side, y), right, Print.Foot, Anchor.End);
        var left = page == 0
            ? Say.Of("report.your-stoves-own-manual-and-local-code")
            : Say.Of("report.for", input.Heading, input.Customer, Print.Day(input.At));
        var room = format.Measure - Print.Foot.Width(right) - 16;
        var lines = Words.Wrap(left, room, Print.Foot);
        yield return new Text(new(format.Side, y), lines.Count == 1 ? lines[0] : lines[0] + " …", Print.Foot);
    }
}
