using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Papers;

/// <summary>The card for the household: what to do before each fire, every week, every ten bags, and when something is wrong.</summary>
internal static class HandoverCardPage
{
    private static readonly Lettering Title = new(26, true, Token.Ink);
    private static readonly Lettering Head = new(14, true, Token.Ink);
    private static readonly Lettering Body = new(13, Colour: Token.Ink);

    // Common practice, no source.
    private static (string Head, ImmutableArray<string> Steps)[] Care =>
    [
        (Say.Of("card.before-you-light-it"), [Say.Of("card.stove-cold-lift-the-burn-pots-ash"), Say.Of("card.hopper-lid-shut-nothing-that-burns-within")]),
        (Say.Of("common.every-week"), [Say.Of("card.wipe-the-glass-when-it-is-cold"), Say.Of("card.work-the-scraper-if-the-stove-has"), Say.Of("card.press-the-co-alarms-test-button")]),
        (Say.Of("card.every-ten-bags"), [Say.Of("card.empty-the-ash-pan-when-it-has"), Say.Of("card.sweep-fines-out-of-the-hoppers-bottom")]),
        (Say.Of("card.never"), [Say.Of("card.never-pull-the-plug-on-a-live"), Say.Of("card.never-use-an-ordinary-vacuum-cleaner-on")]),
    ];

    public static void Put(Flow flow, ReportInput input, PageFormat format)
    {
        var measure = format.Measure;
        flow.Put(
        [
            new Strip(40, [new Text(new(0, 24), Say.Of("card.looking-after-your-stove"), Title)], true),
            .. Print.Paragraph(string.Join(" · ", new[] { input.Appliance, input.Address }.Where(w => w.Length > 0)), measure, Print.Small),
            Print.Gap(10),
        ]);
        foreach (var (head, steps) in Care) Block(flow, head, steps, measure);
        if (input.Handed.Length > 0) Block(flow, Say.Of("card.as-we-showed-you"), input.Handed, measure);
        var heed = Words.Pretty(Say.Of("card.smell-of-smoke-headache-or-the-co"), measure - 28, Head);
        flow.Space(4);
        flow.Put(new Strip(24 + heed.Count * 19, [new Rect(new Box(0, 0, measure, 16 + heed.Count * 19), Roles.Heed, 3), .. heed.Select((line, i) => new Text(new(14, 22 + i * 19), line, Head))]));
        flow.Space(8);
        flow.Put(
        [
            .. input.Next is { } next ? Print.Paragraph(Say.Of("card.next-service", next.Headline), measure, Body) : [],
            .. Print.Paragraph(string.Join(" · ", new[] { input.Firm.Name, input.Firm.Contact }.Where(w => w.Length > 0)), measure, Head),
            .. Print.Paragraph(Say.Of("card.your-stoves-own-manual-comes-first-wherever"), measure, Print.Fine),
        ]);
    }

    private static void Block(Flow flow, string head, ImmutableArray<string> steps, double measure)
    {
        flow.Put([Print.Heading(head, measure, Head), .. steps.SelectMany(s => Print.Paragraph(s, measure, Body, 20).Select((strip, i) => i == 0 ? strip with { Shapes = [new Rect(new Box(1, 4, 10, 10), new Role("tick", null, Token.Ink3, 0.9)), .. strip.Shapes] } : strip).Append(Print.Gap(3)))]);
        flow.Space(9);
    }
}
