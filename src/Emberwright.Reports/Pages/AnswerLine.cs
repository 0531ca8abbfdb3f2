using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>
/// The answer to "May I use my stove?", the largest words of the report. Four forms, same place and size: ticked ring,
/// half ring, barred ring in reverse, empty ring. The shape tells it without colour, the word without the shape.
/// </summary>
internal static class AnswerLine
{
    private const double Size = 42;
    private static readonly Lettering Huge = new(Size, true, Token.Ink);
    private static readonly Lettering HugeReverse = new(Size, true, Token.OnEmber);

    public static IReadOnlyList<Strip> Strips(Answer answer, double measure, FrontType type)
    {
        var word = Word(answer.Use);
        var no = answer.Use == Use.No;
        var lettering = no ? HugeReverse : Huge;
        var wide = 52 + lettering.Width(word) + (no ? 14 : 0);
        var beside = measure - wide - 20;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        if (no) shapes.Add(new Rect(new Box(0, 0, wide, 48), Roles.Tag, 2));
        shapes.AddRange(Mark(answer.Use, no ? 7 : 0, 3));
        shapes.Add(new Text(new(no ? 58 : 52, 39), word, lettering));
        var strips = new List<Strip> { new(22, [new Text(new(0, 13), Say.Of("common.may-i-use-my-stove"), type.Question)], KeepWithNext: true) };
        var lines = beside >= 170 ? Words.Pretty(answer.Reason, beside, type.Lead) : [];
        if (lines.Count is > 0 and <= 3)
        {
            var step = Print.LineHeight(type.Lead);
            var top = Math.Max(0, 24 - lines.Count * step / 2);
            for (var i = 0; i < lines.Count; i++) shapes.Add(new Text(new(wide + 20, top + step * (i + 0.76)), lines[i], type.Lead));
            strips.Add(new(Math.Max(52, lines.Count * step + 4), shapes.ToImmutable()));
            return strips;
        }

        strips.Add(new(56, shapes.ToImmutable(), KeepWithNext: true));
        strips.AddRange(Print.Paragraph(answer.Reason, measure, type.Lead));
        return strips;
    }

    /// <summary>The answer in a word or three.</summary>
    public static string Word(Use use) => use switch
    {
        Use.Yes => Say.Of("answer.yes"),
        Use.YesWithLimits => Say.Of("answer.yes-with-limits"),
        Use.No => Say.Of("answer.no"),
        Use.NotDecided => Say.Of("answer.not-yet"),
    };

    private static IEnumerable<Shape> Mark(Use use, double x, double y)
    {
        var ink = use == Use.No ? Token.OnEmber : Token.Ink;
        var thick = new Role("mark", null, ink, 4.5);
        var centre = new Spot(x + 21, y + 21);
        var ring = new Circle(centre, 18.7, new Role("mark", null, ink, 3.7));
        return use switch
        {
            Use.Yes => [ring, new Polyline([new(x + 12.7, y + 21.7), new(x + 18.7, y + 27.7), new(x + 30, y + 14.2)], thick)],
            Use.YesWithLimits => [ring, new Polygon([.. HalfDisc(centre, 18.7)], new Role("mark", ink))],
            Use.No => [ring, new Line(new(x + 8, y + 34), new(x + 34, y + 8), thick)],
            Use.NotDecided => [new Circle(centre, 18.7, new Role("mark", null, ink, 3.7, 6, 4))],
        };
    }

    // Left half of the disc as a fine polygon; our scenes know no arcs.
    private static IEnumerable<Spot> HalfDisc(Spot centre, double radius) =>
        Enumerable.Range(0, 37).Select(i => Math.PI / 2 + Math.PI * i / 36)
            .Select(a => new Spot(centre.X + radius * Math.Cos(a), centre.Y + radius * Math.Sin(a)));
}
