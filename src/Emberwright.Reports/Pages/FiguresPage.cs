using System.Collections.Immutable;
using Emberwright.Reports.Fonts;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.Pages;

/// <summary>
/// The page of figures: every reading against its band, the air path, areas, suspects, proofs, instruments, what could
/// not be covered, where limits come from.
/// </summary>
internal static class FiguresPage
{
    private const double Gutter = 22;
    private const double CircuitScale = 0.6;
    private static string CircuitKey => Say.Of("figures.down-the-way-of-the-current-right");

    public static void Put(Flow flow, ReportInput input, ReportPictures pictures, PageFormat format, FigureType type, bool split = false)
    {
        var measure = format.Measure;
        var half = (measure - Gutter) / 2;
        flow.NewPage();
        flow.Mark(Say.Of("figures.the-figures"));
        flow.Put([.. Title(input, measure, type)]);
        if (input.Readings.Length > 0)
        {
            flow.Space(5);
            flow.PutTable([.. ReadingsTable.Head(input, measure, type)], [.. ReadingsTable.Rows(input, measure, type)]);
        }

        // A lone profile leaves room for the areas beside it.
        var areas = FigureBlocks.Areas(input, half, type);
        var beside = pictures.Profiles.Length == 1 && !split;
        if (input.FlueGas.Length > 0)
        {
            flow.Space(6);
            flow.PutTable([.. RecordBlocks.FlueHead(measure, type)], [.. RecordBlocks.Flue(input, measure, type)]);
        }

        Profiles(flow, input, pictures, measure, half, type, beside ? areas : []);
        if (pictures.Circuits.Length > 1) Circuits(flow, pictures, measure, half, type);
        if (split)
        {
            flow.NewPage();
            flow.Mark(Say.Of("figures.what-follows-from-them"));
            flow.Put(new Strip(26, [new Text(new(0, 14), Say.Of("figures.what-follows-from-them"), Print.Title)], true));
        }

        Trends(flow, input, half, type);
        flow.Space(6);
        Columns(flow, half,
        [
            .. pictures.Circuits.Length == 1 ? [Circuit(pictures.Circuits[0], half, type)] : Array.Empty<IReadOnlyList<Strip>>(),
            beside ? [] : areas,
            FigureBlocks.Suspects(input, half, type),
            FigureBlocks.Proofs(input, half, type),
            .. input.Records.Select(block => (IReadOnlyList<Strip>)[.. RecordBlocks.Strips(block, half, type)]),
            FigureBlocks.List(Say.Of("figures.instruments-and-parts"), [.. input.Instruments, .. input.Parts], half, type),
            FigureBlocks.List(Say.Of("figures.what-this-visit-does-not-cover"), [.. input.Limitations, .. Missing(input)], half, type),
            FigureBlocks.List(Say.Of("figures.where-limits-and-bands-come-from"), input.Sources, half, type),
        ]);
        flow.Space(5);
        flow.Put([.. Closing(input, measure, type)]);
    }

    private static IEnumerable<Strip> Title(ReportInput input, double measure, FigureType type)
    {
        yield return new Strip(22, [new Text(new(0, 14), Say.Of("figures.the-figures"), Print.Title), new Text(new(measure, 14), $"{Print.Day(input.At)} · {input.Technician}", Print.Small, Anchor.End)], true);
        foreach (var line in (string[])[input.Appliance, .. input.Site])
            foreach (var s in FigureBlocks.Tight(line, measure, 0, type, type.Text)) yield return s;
    }

    private static void Profiles(Flow flow, ReportInput input, ReportPictures pictures, double measure, double half, FigureType type, List<Strip> beside)
    {
        if (pictures.Profiles.IsEmpty) return;
        flow.Space(6);
        var columns = pictures.Profiles.Select((scene, i) => (IReadOnlyList<Strip>)
        [
            type.Heading(pictures.ProfileTitles[i], half),
            Print.Picture(scene, half, 0.68) with { KeepWithNext = true },
        ]).ToList();
        if (beside.Count > 0) columns.Add(beside);
        flow.PutSideBySide([.. columns.Select((c, i) => (i * (half + Gutter), c))]);
        List<string> key = [Say.Of("figures.ribbon-healthy-diamond-out-circle-in-below")];
        if (ReportPictures.HasLast(input)) key.Add(Say.Of("figures.hollow-bar-last-visit"));
        if (ReportPictures.Supposition(input) is { } supposed) key.Add(Say.Of("figures.dashed", supposed));
        flow.Put([.. Print.Paragraph(string.Join(' ', key), measure, type.Fine)]);
    }

    private static void Circuits(Flow flow, ReportPictures pictures, double measure, double half, FigureType type)
    {
        flow.Space(6);
        flow.PutSideBySide([.. pictures.Circuits.Select((scene, i) => (i * (half + Gutter), (IReadOnlyList<Strip>)[type.Heading(scene.Title, half), Print.Picture(scene, half, CircuitScale)]))]);
        flow.Put([.. Print.Paragraph(CircuitKey, measure, type.Fine)]);
    }

    // A lone circuit stands in a column, with what follows beside it.
    private static IReadOnlyList<Strip> Circuit(Scene scene, double half, FigureType type) =>
        [type.Heading(scene.Title, half), Print.Picture(scene, half, CircuitScale), .. FigureBlocks.Tight(CircuitKey, half, 0, type)];

    // Where an earlier visit is known: how each stands to then.
    private static void Trends(Flow flow, ReportInput input, double half, FigureType type)
    {
        // Three beside each other, four in two rows of two.
        var across = input.Trends.Length == 3 ? 3 : 2;
        var width = (2 * half + Gutter - (across - 1) * Gutter) / across;
        for (var i = 0; i < input.Trends.Length; i += across)
        {
            flow.Space(6);
            flow.PutSideBySide([.. input.Trends.Skip(i).Take(across).Select((t, c) => (c * (width + Gutter), (IReadOnlyList<Strip>)
                [type.Heading($"{t.Name}, {MeasureUnits.Shown(t.Measure, input.Units).Unit.Symbol}", width), Print.Picture(TrendPicture.Draw(t, input.Units, width / 0.85, $"trend-{i + c + 1}"), width, 0.85)]))]);
        }

        if (input.Trends.Length > 0) flow.Put([.. FigureBlocks.Tight(Say.Of("figures.over-the-visits-hollow-as-found-full"), half * 2, 0, type)]);
    }

    // The first block stands left; the rest go where the columns come out most nearly level, each column in order.
    private static void Columns(Flow flow, double half, ImmutableArray<IReadOnlyList<Strip>> blocks)
    {
        blocks = [.. blocks.Where(b => b.Count > 0)];
        if (blocks.IsEmpty) return;
        var heights = blocks.Select(b => b.Sum(s => s.Height)).ToList();
        var all = heights.Sum();
        double LeftHeight(int set) => heights.Where((_, i) => (set >> i & 1) == 1).Sum();
        var left = Enumerable.Range(0, 1 << blocks.Length).Where(set => (set & 1) == 1)
            .MinBy(set => Math.Max(LeftHeight(set), all - LeftHeight(set)));
        flow.PutColumns((0, Stack(blocks.Where((_, i) => (left >> i & 1) == 1))), (half + Gutter, Stack(blocks.Where((_, i) => (left >> i & 1) == 0))));
    }

    private static List<Strip> Stack(IEnumerable<IReadOnlyList<Strip>> blocks) =>
        [.. blocks.SelectMany((b, i) => i == 0 ? b : [Print.Gap(4), .. b])];

    private static IEnumerable<string> Missing(ReportInput input)
    {
        string?[] all =
        [
            input.Customer, input.Address, input.Technician, input.Firm.Name, input.Firm.Contact, input.Appliance, input.Answer.Reason,
            .. input.Found, .. input.Did, .. input.ShouldDo, .. input.Limitations, .. input.Parts, .. input.Instruments,
            .. input.Photos.Select(p => p.Caption), .. input.Signatures.Select(s => s.Name),
        ];
        var missing = all.SelectMany(Printable.Missing).Distinct().ToList();
        if (missing.Count == 0) yield break;
        var letters = string.Join(", ", missing.Take(24).Select(r => $"U+{r.Value:X4}")) + (missing.Count > 24 ? ", …" : "");
        yield return Say.Of("figures.letters-this-reports-font-does-not-have", letters);
    }

    private static IEnumerable<Strip> Closing(ReportInput input, double measure, FigureType type)
    {
        yield return new Strip(4, [new Line(new(0, 0.5), new(measure, 0.5), Print.Rule)], true);
        if (ReportPages.SealOf(input, null) is { } printed)
        {
            const double side = 84;
            var beside = Words.Wrap(Say.Of("figures.sealed-journal-sha-256-the-code-says", Spaced(printed.Hash)), measure - side - 12, type.Foot);
            yield return new Strip(side + 2,
            [
                .. SealCode.Draw(printed.CodeText, new(-3, 0), side),
                .. beside.Select((line, i) => new Text(new(side + 8, 13 + i * type.Line), line, type.Foot)),
            ], true);
        }

        var seal = input.Seal is { Length: > 0 } s ? input.Visit is null ? Say.Of("figures.sealed-journal-sha-256", Spaced(s)) : "" : Say.Of("figures.the-journal-of-this-visit-is-not");
        foreach (var line in (string[])
        [
            Say.Of("figures.where-the-appliances-manual-its-listing-or"),
            Say.Of("figures.figures-by-emberwright", seal, input.EngineVersion).TrimStart(),
        ])
            foreach (var strip in FigureBlocks.Tight(line, measure, 0, type, type.Foot)) yield return strip;
    }

    private static string Spaced(string seal) => string.Join(' ', seal.Chunk(8).Select(c => new string(c)));
}
