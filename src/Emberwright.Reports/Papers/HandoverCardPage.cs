using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;

namespace Emberwright.Reports.Papers;

/// <summary>The card for the household: what to do before each fire, every week, every ten bags, and when something is wrong.</summary>
internal static class HandoverCardPage
{
    private static readonly Lettering Title = new(26, true, Token.Ink);
    private static readonly Lettering Head = new(14, true, Token.Ink);
    private static readonly Lettering Body = new(13, Colour: Token.Ink);

    // Common practice, no source.
    private static readonly (string Head, ImmutableArray<string> Steps)[] Care =
    [
        ("Before you light it", ["Stove cold: lift the burn pot’s ash out, open every hole, put the pot back the right way round.", "Hopper lid shut. Nothing that burns within 1 m (3 ft) of the door."]),
        ("Every week", ["Wipe the glass when it is cold.", "Work the scraper, if the stove has one.", "Press the CO alarm’s test button."]),
        ("Every ten bags", ["Empty the ash pan when it has been out for a day. Ash can glow for a day: metal bucket with a lid, outdoors, on stone, away from the house.", "Sweep fines out of the hopper’s bottom before you fill it."]),
        ("Never", ["Never pull the plug on a live fire: press off, and let the blower stop by itself.", "Never use an ordinary vacuum cleaner on ash, and no fuel but what the label names."]),
    ];

    public static void Put(Flow flow, ReportInput input, PageFormat format)
    {
        var measure = format.Measure;
        flow.Put(
        [
            new Strip(40, [new Text(new(0, 24), "Looking after your stove", Title)], true),
            .. Print.Paragraph(string.Join(" · ", new[] { input.Appliance, input.Address }.Where(w => w.Length > 0)), measure, Print.Small),
            Print.Gap(10),
        ]);
        foreach (var (head, steps) in Care) Block(flow, head, steps, measure);
        if (input.Handed.Length > 0) Block(flow, "As we showed you", input.Handed, measure);
        var heed = Words.Pretty("Smell of smoke, headache, or the CO alarm sounds: everyone out, then the emergency number, then us. Do not pull the plug first.", measure - 28, Head);
        flow.Space(4);
        flow.Put(new Strip(24 + heed.Count * 19, [new Rect(new Box(0, 0, measure, 16 + heed.Count * 19), Roles.Heed, 3), .. heed.Select((line, i) => new Text(new(14, 22 + i * 19), line, Head))]));
        flow.Space(8);
        flow.Put(
        [
            .. input.Next is { } next ? Print.Paragraph($"Next service: {next.Headline}.", measure, Body) : [],
            .. Print.Paragraph(string.Join(" · ", new[] { input.Firm.Name, input.Firm.Contact }.Where(w => w.Length > 0)), measure, Head),
            .. Print.Paragraph("Your stove’s own manual comes first wherever it asks for more.", measure, Print.Fine),
        ]);
    }

    private static void Block(Flow flow, string head, ImmutableArray<string> steps, double measure)
    {
        flow.Put([Print.Heading(head, measure, Head), .. steps.SelectMany(s => Print.Paragraph(s, measure, Body, 20).Select((strip, i) => i == 0 ? strip with { Shapes = [new Rect(new Box(1, 4, 10, 10), new Role("tick", null, Token.Ink3, 0.9)), .. strip.Shapes] } : strip).Append(Print.Gap(3)))]);
        flow.Space(9);
    }
}
