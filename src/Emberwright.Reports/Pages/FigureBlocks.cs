using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>The blocks under the readings: areas, suspects, proofs, plain lists. Each is empty when there is nothing to say.</summary>
internal static class FigureBlocks
{
    /// <summary>Restriction of each area in words and per cent, with its interval, as found and as left.</summary>
    public static List<Strip> Areas(ReportInput input, double half, FigureType type)
    {
        if (input.Areas.IsEmpty) return [];
        // Before any work there is nothing left to compare with, and the columns have room.
        var worked = input.Areas.Any(a => a.After is not null);
        double limitX = half * (worked ? 0.365 : 0.53), foundX = half * (worked ? 0.39 : 0.58), leftX = half * 0.71;
        List<Strip> strips =
        [
            type.Heading(Say.Of("figures.how-blocked-with-nine-chances-in-ten"), half),
            new(type.Row(1), [new Text(new(limitX, type.Baseline), Say.Of("figures.limit"), type.Fine, Anchor.End), new Text(new(foundX, type.Baseline), Say.Of("figures.as-found"), type.Fine), .. worked ? [new Text(new(leftX, type.Baseline), Say.Of("figures.as-left"), type.Fine)] : Array.Empty<Shape>()], true),
        ];
        foreach (var area in input.Areas)
        {
            var lines = Words.Wrap(area.Name, limitX - 19, type.Text);
            var shapes = Ruled(half, lines, type.Text, type);
            if (area.Limit is { } limit) shapes.Add(new Text(new(limitX, type.Baseline), Percent(limit), type.Fine, Anchor.End));
            Restricted(shapes, foundX, area.Before, RestrictionPicture.IsPast(area), type);
            if (worked) Restricted(shapes, leftX, area.After, false, type);
            strips.Add(new(type.Row(lines.Count), shapes.ToImmutable()));
        }

        return strips;
    }

    /// <summary>Suspects with probability and because.</summary>
    public static List<Strip> Suspects(ReportInput input, double half, FigureType type)
    {
        if (input.Suspects.IsEmpty && input.SuspectNotes.IsEmpty) return [];
        List<Strip> strips = [type.Heading(Say.Of("figures.what-was-suspected-and-why"), half)];
        foreach (var suspect in input.Suspects)
        {
            var now = suspect.Now is { } n ? Say.Of("figures.now", Print.Percent(n)) : "";
            var share = Print.Percent(suspect.Probability) + now;
            var lines = Words.Wrap(suspect.Name, half - type.Text.Width(share) - 10, type.Strong);
            var shapes = Ruled(half, lines, type.Strong, type);
            shapes.Add(new Text(new(half, type.Baseline), share, type.Text, Anchor.End));
            strips.Add(new(type.Row(lines.Count), shapes.ToImmutable(), suspect.Because.Length > 0));
            foreach (var because in suspect.Because) strips.AddRange(Tight(because, half, 8, type));
            strips.Add(Print.Gap(2));
        }

        foreach (var note in input.SuspectNotes) strips.AddRange(Tight(note, half, 0, type));
        return strips;
    }

    /// <summary>Safety devices and how they were proved.</summary>
    public static List<Strip> Proofs(ReportInput input, double half, FigureType type)
    {
        if (input.Proofs.IsEmpty) return [];
        List<Strip> strips = [type.Heading(Say.Of("figures.safety-devices"), half)];
        foreach (var proof in input.Proofs)
        {
            var word = proof.Passed switch { true => Say.Of("figures.proved"), false => Say.Of("common.failed"), null => Say.Of("figures.not-done") };
            var said = proof.Result.Length == 0 ? proof.Name : $"{proof.Name}, {proof.Result}";
            var lines = Words.Pretty(said, half - 52, type.Text);
            var shapes = Ruled(half, lines, type.Text, type);
            if (proof.Passed == true) shapes.Add(new Text(new(half, type.Baseline), word, type.Strong, Anchor.End));
            else if (proof.Passed is null) shapes.Add(new Text(new(half, type.Baseline), word, type.Fine, Anchor.End));
            else shapes.AddRange(type.Flag(word, half - type.Flag(word, 0).Width).Shapes);
            strips.Add(new(type.Row(lines.Count), shapes.ToImmutable()));
        }

        return strips;
    }

    /// <summary>A heading and one paragraph an item.</summary>
    public static List<Strip> List(string title, ImmutableArray<string> items, double half, FigureType type) => items.IsEmpty
        ? []
        : [type.Heading(title, half), .. items.SelectMany(item => Tight(item, half, 0, type).Append(Print.Gap(1.5)))];

    /// <summary>Lines closer than running text; pages of figures are read item by item.</summary>
    public static IEnumerable<Strip> Tight(string words, double measure, double indent, FigureType type, Lettering? lettering = null)
    {
        var used = lettering ?? type.Fine;
        var lines = Words.Pretty(words, measure - indent, used);
        return lines.Select(line => new Strip(type.Line, [new Text(new(indent, type.Baseline - 1), line, used)]));
    }

    private static ImmutableArray<Shape>.Builder Ruled(double half, List<string> lines, Lettering lettering, FigureType type)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new Line(new(0, 0), new(half, 0), Print.Hairline));
        for (var i = 0; i < lines.Count; i++) shapes.Add(new Text(new(0, type.Baseline + type.Line * i), lines[i], lettering));
        return shapes;
    }

    private static void Restricted(ImmutableArray<Shape>.Builder shapes, double x, Restriction? r, bool past, FigureType type)
    {
        if (r is not { } known)
        {
            shapes.Add(new Text(new(x, type.Baseline), "–", type.Fine));
            return;
        }

        if (past)
        {
            var (flag, width) = type.Flag(known.Word, x - 3.5);
            shapes.AddRange(flag);
            x += width;
        }
        else
        {
            shapes.Add(new Text(new(x, type.Baseline), known.Word, type.Strong));
            x += type.Strong.Width(known.Word) + 3;
        }

        shapes.Add(new Text(new(x, type.Baseline), $"{Percent(known.Likely)} ({Percent(known.Low)}–{Percent(known.High)})", type.Text));
    }

    private static string Percent(double share) => Figures.Fixed(share * 100, 0);
}
