using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Cutaway;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>
/// The technical page: the section through a stove of this construction, where a gauge joins, what watches it, and what
/// opens with what holds it. For whoever works on it next.
/// </summary>
internal static class StovePage
{
    private const double Scale = 0.84;
    private static readonly FigureType Type = new(9);

    public static void Put(Flow flow, ReportInput input, PageFormat format)
    {
        if (input.Pattern is not { } pattern) return;
        var measure = format.Measure;
        flow.NewPage();
        flow.Mark(Say.Of("common.the-stove"));
        flow.Put([new Strip(22, [new Text(new(0, 14), Say.Of("common.the-stove"), Print.Title)], true), .. FigureBlocks.Tight(input.Appliance, measure, 0, Type, Type.Text), Print.Gap(6)]);
        var section = CutawayPicture.Draw(pattern, "section", key: false);
        var wide = section.View.Width * Scale;
        var side = measure - wide - 14;
        flow.PutSideBySide(
            (0, [Print.Picture(section, wide, Scale)]),
            (wide + 14, [.. Key(CutawayPicture.Key(pattern), side)]));
        flow.Put([.. FigureBlocks.Tight(Say.Of("stove.a-section-through-a-stove-of-this"), measure, 0, Type)]);
        if (input.Panels.IsEmpty) return;
        flow.Space(8);
        double where = measure * 0.30, held = measure * 0.66;
        flow.PutTable(
        [
            Type.Heading(Say.Of("stove.what-opens"), measure),
            new Strip(Type.Row(1), [new Text(new(where, Type.Baseline), Say.Of("stove.where"), Type.Fine), new Text(new(held, Type.Baseline), Say.Of("stove.held-by"), Type.Fine)], true),
        ],
        [
            .. input.Panels.Select((panel, i) =>
            {
                var letter = ((char)('a' + i % 26)).ToString();
                var name = Words.Wrap(Say.Term(panel.Name), where - 26, Type.Text);
                var place = Words.Wrap(Say.Term(panel.Where), held - where - 10, Type.Fine);
                var fasteners = Words.Wrap(Say.Term(panel.FastenersText), measure - held, Type.Fine);
                return new Strip(Type.Row(Math.Max(name.Count, Math.Max(place.Count, fasteners.Count))) + 1.5,
                [
                    new Line(new(0, 0), new(measure, 0), Print.Hairline),
                    new Text(new(4, Type.Baseline + 1), letter, Type.Strong),
                    .. name.Select((line, k) => new Text(new(18, Type.Baseline + 1 + k * Type.Line), line, Type.Text)),
                    .. place.Select((line, k) => new Text(new(where, Type.Baseline + 1 + k * Type.Line), line, Type.Fine)),
                    .. fasteners.Select((line, k) => new Text(new(held, Type.Baseline + 1 + k * Type.Line), line, Type.Fine)),
                ]);
            }),
        ]);
    }

    private static IEnumerable<Strip> Key(IReadOnlyList<CutawayKey.Row> rows, double width)
    {
        const double sign = 0.84;
        foreach (var row in rows)
        {
            var lines = Words.Wrap(row.Words, width - 28, Type.Text);
            yield return new Strip(Math.Max(20, lines.Count * Type.Line + 6),
                [new Group(row.Sign, 11, 9, Scale: sign), .. lines.Select((line, i) => new Text(new(28, 12.5 + i * Type.Line), line, Type.Text))]);
        }
    }
}
