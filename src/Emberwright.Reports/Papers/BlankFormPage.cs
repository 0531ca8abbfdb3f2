using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Cutaway;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Papers;

/// <summary>What a blank form is printed from.</summary>
/// <param name="Firm">Whose.</param>
/// <param name="Title">Kind of visit, e.g. "Service".</param>
/// <param name="Pattern">The pattern, for its ports and section; null prints the usual three ports.</param>
/// <param name="Steps">Steps of making safe, with their cautions.</param>
/// <param name="Readings">What is to be read, by condition.</param>
/// <param name="Areas">Areas to be worked on.</param>
/// <param name="Proofs">What is to be proved.</param>
/// <param name="Required">What sign-off asks of this kind of visit.</param>
/// <param name="EngineVersion">Version of the engine.</param>
public sealed record FormInput(
    Firm Firm, string Title, Pattern? Pattern, ImmutableArray<(string Step, string Caution)> Steps, ImmutableArray<(string Condition, string Reading)> Readings,
    ImmutableArray<string> Areas, ImmutableArray<string> Proofs, ImmutableArray<string> Required, string EngineVersion);

/// <summary>The visit as a form: lines to write on in the order of the work, each caution at its step.</summary>
internal static class BlankFormPage
{
    private const double Write = 21;
    private static readonly Lettering Title = new(22, true, Token.Ink);
    private static readonly Lettering Head = new(12, true, Token.Ink);
    private static readonly Lettering Body = new(10.5, Colour: Token.Ink);
    private static readonly Role Tick = new("tick", null, Token.Ink, 0.9);

    public static void Put(Flow flow, FormInput form, PageFormat format)
    {
        var measure = format.Measure;
        flow.Put(
        [
            new Strip(32, [new Text(new(0, 20), form.Title, Title), new Text(new(measure, 20), form.Firm.Name, Print.SmallStrong, Anchor.End)], true),
            .. Lines(measure, [Say.Of("form.customer"), Say.Of("form.address"), Say.Of("form.maker-model-serial"), Say.Of("form.technician-date-time"), Say.Of("form.altitude-outdoors-room-wind-supply"), Say.Of("form.vent-diameter-up-across-elbows-terminal")]),
            Print.Gap(8),
        ]);
        flow.Put([Print.Heading(Say.Of("form.what-the-customer-says-in-their-words"), measure, Head), Rules(measure, 2), Print.Gap(6)]);
        flow.Put([Print.Heading(Say.Of("form.make-safe"), measure, Head), .. form.Steps.SelectMany(s => Ticked(s.Step, s.Caution, measure)), Print.Gap(6)]);
        Readings(flow, form, measure);
        flow.Space(8);
        double outcome = measure * 0.36;
        flow.PutTable([Print.Heading(Say.Of("form.areas"), measure, Head), new Strip(14, [new Text(new(outcome, 10), Say.Of("form.before-what-was-done-after"), Print.Fine)], true)],
            [.. form.Areas.Select(a => new Strip(Write + 6, [new Rect(new Box(1, 7, 10, 10), Tick), new Text(new(18, 16), a, Body), new Line(new(outcome, 20), new(measure, 20), Print.Hairline)]))]);
        flow.Space(8);
        flow.Put([Print.Heading(Say.Of("form.proofs"), measure, Head), .. form.Proofs.SelectMany(p => Ticked(p, "", measure)), Print.Gap(6)]);
        flow.Put([Print.Heading(Say.Of("form.parts-what-number-fitted-or-to-order"), measure, Head), Rules(measure, 3), Print.Gap(6)]);
        if (form.Required.Length > 0)
        {
            flow.PutTable([Print.Heading(Say.Of("form.before-you-sign-this-visit-asks-for"), measure, Head)], [.. form.Required.SelectMany(r => Ticked(r, "", measure))]);
            flow.Space(6);
        }

        flow.Put([Print.Heading(Say.Of("form.limits-what-was-not-done-and-why"), measure, Head), Rules(measure, 2), Print.Gap(14)]);
        var half = (measure - 22) / 2;
        flow.PutSideBySide((0, [Sign(half, Say.Of("common.customer-date"))]), (half + 22, [Sign(half, Say.Of("form.technician-date"))]));
        if (form.Pattern is { } pattern) Section(flow, pattern, measure);
    }

    private static void Readings(Flow flow, FormInput form, double measure)
    {
        double name = measure * 0.19, found = measure * 0.46, left = measure * 0.64, with = measure * 0.82;
        flow.PutTable(
        [
            Print.Heading(Say.Of("form.readings-each-with-its-unit"), measure, Head),
            new Strip(14, [new Text(new(found, 10), Say.Of("common.as-found"), Print.Fine), new Text(new(left, 10), Say.Of("common.as-left"), Print.Fine), new Text(new(with, 10), Say.Of("form.instrument"), Print.Fine)], true),
        ],
        [
            .. form.Readings.GroupBy(r => r.Condition).SelectMany(group => group.Select((r, i) =>
            {
                var words = Words.Wrap(r.Reading, found - name - 14, Body);
                var height = Write + 12 * (words.Count - 1);
                return new Strip(height,
                [
                    i == 0 ? new Line(new(0, 0), new(measure, 0), Print.Rule) : new Line(new(name - 5, 0), new(measure, 0), Print.Hairline),
                    .. i == 0 ? [new Text(new(0, 14), r.Condition, new Lettering(9.5, true, Token.Ink))] : Array.Empty<Shape>(),
                    .. words.Select((line, k) => new Text(new(name, 14 + 12 * k), line, Body)),
                    .. new[] { found, left, with }.Select(x => new Line(new(x - 8, 3), new(x - 8, height), Print.Hairline)),
                ], KeepWithNext: i < group.Count() - 1);
            })),
        ]);
    }

    private static void Section(Flow flow, Pattern pattern, double measure)
    {
        flow.NewPage();
        flow.Put(new Strip(24, [new Text(new(0, 14), Say.Of("form.where-it-is-on-this-stove"), Print.Title)], true));
        var scene = CutawayPicture.Draw(pattern, "form-section");
        flow.Put(Print.Picture(scene, measure, Math.Min(1.05, flow.Left / scene.View.Height)));
    }

    private static IEnumerable<Strip> Lines(double measure, IEnumerable<string> names) => names.Select(name =>
        new Strip(Write + 3, [new Text(new(0, 18), name, Print.Fine), new Line(new(Print.Fine.Width(name) + 8, 20), new(measure, 20), Print.Rule)]));

    private static Strip Rules(double measure, int count) =>
        new(count * (Write + 2), [.. Enumerable.Range(0, count).Select(i => i * (Write + 2) + Write).Select(y => new Line(new(0, y), new(measure, y), Print.Hairline))]);

    private static IEnumerable<Strip> Ticked(string words, string caution, double measure)
    {
        var first = true;
        foreach (var strip in Print.Paragraph(words, measure, Body, 18))
        {
            yield return first ? strip with { Shapes = [new Rect(new Box(1, 2, 9.5, 9.5), Tick), .. strip.Shapes], KeepWithNext = caution.Length > 0 || strip.KeepWithNext } : strip;
            first = false;
        }

        if (caution.Length > 0)
            foreach (var strip in Print.Paragraph(caution, measure, Print.Fine, 18)) yield return strip;
        yield return Print.Gap(2.5);
    }

    private static Strip Sign(double width, string words) => new(50, [new Line(new(0, 26), new(width, 26), Print.Rule), new Text(new(0, 39), words, Print.Small)]);
}
