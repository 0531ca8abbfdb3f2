using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>Flue gas before and after with its meaning, and the blocks of what else is on record.</summary>
internal static class RecordBlocks
{
    public static IEnumerable<Strip> FlueHead(double measure, FigureType type)
    {
        yield return type.Heading(Say.Of("flue.flue-gas-and-efficiency-high-burn"), measure);
        yield return new Strip(type.Row(1),
        [
            new Text(new(measure * Found, type.Baseline), Say.Of("common.as-found"), type.Fine, Anchor.End),
            new Text(new(measure * Left, type.Baseline), Say.Of("common.as-left"), type.Fine, Anchor.End),
            new Text(new(measure * Means, type.Baseline), Say.Of("flue.what-it-means"), type.Fine),
        ], true);
    }

    public static IEnumerable<Strip> Flue(ReportInput input, double measure, FigureType type)
    {
        foreach (var row in input.FlueGas)
        {
            var name = Words.Wrap(row.Name, measure * 0.22, type.Text);
            var means = Words.Wrap(row.Meaning, measure * (1 - Means), type.Fine);
            yield return new Strip(type.Row(Math.Max(name.Count, means.Count)),
            [
                new Line(new(0, 0), new(measure, 0), Print.Hairline),
                .. name.Select((line, i) => new Text(new(0, type.Baseline + i * type.Line), line, type.Text)),
                new Text(new(measure * Found, type.Baseline), row.Found.Length > 0 ? row.Found : "–", row.Found.Length > 0 ? type.Strong : type.Fine, Anchor.End),
                new Text(new(measure * Left, type.Baseline), row.Left.Length > 0 ? row.Left : "–", row.Left.Length > 0 ? type.Strong : type.Fine, Anchor.End),
                .. means.Select((line, i) => new Text(new(measure * Means, type.Baseline + i * type.Line), line, type.Fine)),
            ]);
        }
    }

    /// <summary>A heading, then what is on record, name and words in two columns.</summary>
    public static IEnumerable<Strip> Strips(RecordBlock block, double half, FigureType type)
    {
        yield return type.Heading(block.Title, half);
        foreach (var (name, words) in block.Rows)
        {
            var left = Words.Wrap(name, half * 0.40, type.Fine);
            var right = Words.Pretty(words, half * 0.57, type.Text);
            yield return new Strip(type.Row(Math.Max(left.Count, right.Count)),
            [
                new Line(new(0, 0), new(half, 0), Print.Hairline),
                .. left.Select((line, i) => new Text(new(0, type.Baseline + i * type.Line), line, type.Fine)),
                .. right.Select((line, i) => new Text(new(half * 0.43, type.Baseline + i * type.Line), line, type.Text)),
            ]);
        }
    }

    private const double Found = 0.33;
    private const double Left = 0.505;
    private const double Means = 0.53;
}
