using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Papers;

/// <summary>The tag, A6 upright, with the place of its hole marked at the top.</summary>
internal static class DoorTagPage
{
    private static readonly Lettering Big = new(27, true, Token.OnEmber);
    private static readonly Lettering Word = new(27, true, Token.Ink);
    private static readonly Lettering Body = new(11, Colour: Token.Ink);
    private static readonly Lettering Strong = new(11, true, Token.Ink);
    private static readonly Lettering Fine = new(8.5, Colour: Token.Ink2);

    // Read at arm's length: as large as it fits, and at the smallest size with an ellipsis.
    private static readonly double[] Sizes = [15, 14, 13, 12, 11];

    public static Scene Draw(ReportInput input, PageFormat format)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double x = format.Side, measure = format.Measure, top = 34, foot = format.Height - 44;
        shapes.Add(new Circle(new(format.Width / 2, 18), 8, new Role("hole", null, Token.Ink3, 0.75, 2, 2)));
        var no = input.Answer.Use == Use.No || input.Notice is not null;
        if (no)
        {
            shapes.Add(new Rect(new Box(x, top, measure, 84), Roles.Tag, 2));
            shapes.Add(new Text(new(format.Width / 2, top + 37), Say.Of("tag.do-not-use"), Big, Anchor.Middle));
            shapes.Add(new Text(new(format.Width / 2, top + 68), Say.Of("tag.this-stove"), Big, Anchor.Middle));
        }
        else
        {
            shapes.Add(new Text(new(format.Width / 2, top + 30), input.Answer.Use == Use.NotDecided ? Say.Of("tag.work-not-finished") : Say.Of("tag.serviced"), Word with { Size = input.Answer.Use == Use.NotDecided ? 22 : Word.Size }, Anchor.Middle));
        }

        top += no ? 98 : 48;
        (string Head, string Words, int Most)[] said = [.. no ? Stop(input) : Service(input)];
        var size = Sizes.FirstOrDefault(s => said.Sum(line => Height(line.Words, measure, s, line.Most, whole: true)) <= foot - 8 - top, Sizes[^1]);
        foreach (var (head, words, most) in said)
        {
            Lines(shapes, head, words, x, top, measure, size, most);
            top += Height(words, measure, size, most, whole: size > Sizes[^1]);
        }

        shapes.Add(new Line(new(x, foot - 4), new(x + measure, foot - 4), Print.Letterhead));
        shapes.Add(new Text(new(x, foot + 10), Fit(input.Firm.Name, measure, Strong), Strong));
        shapes.Add(new Text(new(x, foot + 22), Fit(string.Join(" · ", new[] { input.Technician, input.Firm.Contact }.Where(w => w.Length > 0)), measure, Fine), Fine));
        shapes.Add(new Text(new(x, foot + 33), input.Seal is { Length: >= 12 } seal ? Say.Of("common.seal", PrintedSeal.Short(seal)) : "", Fine));
        return new Scene("tag", new Box(0, 0, format.Width, format.Height), Say.Of("common.door-tag"), "", shapes.ToImmutable());
    }

    private static IEnumerable<(string, string, int)> Stop(ReportInput input)
    {
        var notice = input.Notice ?? new StopUse(input.Answer.Reason, "", "", false, input.At);
        yield return (Say.Of("common.why"), notice.Reason, 7);
        yield return (Say.Of("tag.may-be-used-again-only-after-release"), notice.ReleasedBy.Length > 0 ? notice.ReleasedBy : Say.Of("tag.the-firm-below"), 4);
        yield return (Say.Of("tag.since"), $"{Print.Day(notice.At)}, {Print.Time(notice.At)}", 1);
    }

    private static IEnumerable<(string, string, int)> Service(ReportInput input)
    {
        yield return (Say.Of("tag.on"), Print.Day(input.At), 1);
        yield return (Say.Of("tag.may-it-be-used"), $"{AnswerLine.Word(input.Answer.Use)} {input.Answer.Reason}", 6);
        if (input.Next is { } next) yield return (next.Return ? Say.Of("common.we-come-again") : Say.Of("common.next-service"), next.Headline, 2);
        if (input.Answer.Use != Use.NotDecided) yield return (Say.Of("common.every-week"), Say.Of("tag.scrape-the-burn-pot-empty-the-ash"), 4);
    }

    private static double Height(string words, double measure, double size, int most, bool whole)
    {
        var lines = Words.Wrap(words, measure, Body with { Size = size }).Count;
        return 18 + (whole ? lines : Math.Min(lines, most)) * Math.Round(size * 1.36);
    }

    // A tag has no second page: what is too long ends in an ellipsis and stands whole in the report.
    private static void Lines(ImmutableArray<Shape>.Builder shapes, string head, string words, double x, double y, double measure, double size, int most)
    {
        var body = Body with { Size = size };
        shapes.Add(new Text(new(x, y + 8), head, Fine));
        var lines = Words.Wrap(words, measure, body);
        var cut = size <= Sizes[^1] ? Math.Min(most, lines.Count) : lines.Count;
        for (var i = 0; i < cut; i++)
            shapes.Add(new Text(new(x, y + 12 + size + i * Math.Round(size * 1.36)), i == cut - 1 && lines.Count > cut ? Fit(lines[i] + " …", measure, body) : lines[i], body));
    }

    private static string Fit(string words, double measure, Lettering lettering)
    {
        if (lettering.Width(words) <= measure) return words;
        var kept = words.TrimEnd('…', ' ');
        while (kept.Length > 0 && lettering.Width(kept + "…") > measure) kept = kept[..^1];
        return kept + "…";
    }
}
