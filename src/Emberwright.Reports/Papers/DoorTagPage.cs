using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;

namespace Emberwright.Reports.Papers;

/// <summary>The tag, A6 upright, with the place of its hole marked at the top.</summary>
internal static class DoorTagPage
{
    private static readonly Lettering Big = new(27, true, Token.OnEmber);
    private static readonly Lettering Word = new(27, true, Token.Ink);
    private static readonly Lettering Body = new(11, Colour: Token.Ink);
    private static readonly Lettering Strong = new(11, true, Token.Ink);
    private static readonly Lettering Fine = new(8.5, Colour: Token.Ink2);

    public static Scene Draw(ReportInput input, PageFormat format)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double x = format.Side, measure = format.Measure, y = 34;
        shapes.Add(new Circle(new(format.Width / 2, 18), 8, new Role("hole", null, Token.Ink3, 0.75, 2, 2)));
        var no = input.Answer.Use == Use.No;
        if (no || input.Notice is not null)
        {
            var notice = input.Notice ?? new StopUse(input.Answer.Reason, "", "", false, input.At);
            shapes.Add(new Rect(new Box(x, y, measure, 84), Roles.Tag, 2));
            shapes.Add(new Text(new(format.Width / 2, y + 37), "Do not use", Big, Anchor.Middle));
            shapes.Add(new Text(new(format.Width / 2, y + 68), "this stove", Big, Anchor.Middle));
            y += 98;
            Lines(shapes, "Why", notice.Reason, x, measure, 7, ref y);
            Lines(shapes, "May be used again only after release by", notice.ReleasedBy.Length > 0 ? notice.ReleasedBy : "the firm below", x, measure, 4, ref y);
            Lines(shapes, "Since", $"{Print.Day(notice.At)}, {Print.Time(notice.At)}", x, measure, 1, ref y);
        }
        else
        {
            shapes.Add(new Text(new(format.Width / 2, y + 30), input.Answer.Use == Use.NotDecided ? "Work not finished" : "Serviced", Word with { Size = input.Answer.Use == Use.NotDecided ? 22 : Word.Size }, Anchor.Middle));
            y += 48;
            Lines(shapes, "On", Print.Day(input.At), x, measure, 1, ref y);
            Lines(shapes, "May it be used?", $"{AnswerLine.Word(input.Answer.Use)} {input.Answer.Reason}", x, measure, 6, ref y);
            if (input.Next is { } next) Lines(shapes, "Next service", next.Headline, x, measure, 2, ref y);
            if (input.Answer.Use != Use.NotDecided) Lines(shapes, "Every week", "Scrape the burn pot. Empty the ash into a metal bucket with a lid, outdoors. Test the CO alarm.", x, measure, 4, ref y);
        }

        var foot = format.Height - 44;
        shapes.Add(new Line(new(x, foot - 4), new(x + measure, foot - 4), Print.Letterhead));
        shapes.Add(new Text(new(x, foot + 10), Fit(input.Firm.Name, measure, Strong), Strong));
        shapes.Add(new Text(new(x, foot + 22), Fit(string.Join(" · ", new[] { input.Technician, input.Firm.Contact }.Where(w => w.Length > 0)), measure, Fine), Fine));
        shapes.Add(new Text(new(x, foot + 33), input.Seal is { Length: >= 12 } seal ? $"seal {PrintedSeal.Short(seal)}" : "", Fine));
        return new Scene("tag", new Box(0, 0, format.Width, format.Height), "Door tag", "", shapes.ToImmutable());
    }

    // A tag has no second page: what is too long ends in an ellipsis and stands whole in the report.
    private static void Lines(ImmutableArray<Shape>.Builder shapes, string head, string words, double x, double measure, int most, ref double y)
    {
        shapes.Add(new Text(new(x, y + 8), head, Fine));
        y += 12;
        var lines = Words.Wrap(words, measure, Body);
        for (var i = 0; i < Math.Min(most, lines.Count); i++)
        {
            shapes.Add(new Text(new(x, y + 11), i == most - 1 && lines.Count > most ? Fit(lines[i] + " …", measure, Body) : lines[i], Body));
            y += 15;
        }

        y += 6;
    }

    private static string Fit(string words, double measure, Lettering lettering)
    {
        if (lettering.Width(words) <= measure) return words;
        var kept = words.TrimEnd('…', ' ');
        while (kept.Length > 0 && lettering.Width(kept + "…") > measure) kept = kept[..^1];
        return kept + "…";
    }
}
