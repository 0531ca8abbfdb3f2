using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>
/// The stop-use notice: one page that can be left on the stove and signed. The answer, why, what is forbidden, what is still
/// allowed, who may release it.
/// </summary>
internal static class NoticePage
{
    private static readonly Lettering Huge = new(40, true, Token.OnEmber);
    private static readonly Lettering Sub = new(15, true, Token.OnEmber);
    private static readonly Lettering Lead = new(15, Colour: Token.Ink);
    private static readonly Lettering Head = new(13, true, Token.Ink);
    private static readonly Lettering Body = new(12.5, Colour: Token.Ink);

    /// <summary>Common practice, no source.</summary>
    private static ImmutableArray<string> Forbidden =>
    [
        Say.Of("notice.do-not-light-it-do-not-plug"),
        Say.Of("notice.do-not-open-or-repair-it-yourself"),
        Say.Of("notice.keep-the-hopper-lid-and-the-fuel"),
    ];

    public static void Put(Flow flow, ReportInput input, StopUse notice, PageFormat format)
    {
        var measure = format.Measure;
        flow.NewPage();
        flow.Mark(Say.Of("common.stop-use-notice"));
        flow.Put(
        [
            new Strip(112,
            [
                new Rect(new Box(0, 0, measure, 104), Roles.Tag, 2),
                new Text(new(20, 52), Say.Of("notice.do-not-use-this-stove"), Huge with { Size = Math.Min(40, (measure - 40) / Huge.Face.Width(Say.Of("notice.do-not-use-this-stove"), 1)) }),
                new Text(new(20, 84), Say.Of("common.stop-use-notice"), Sub),
                new Text(new(measure - 20, 84), $"{Print.Day(notice.At)}, {Print.Time(notice.At)}", Sub, Anchor.End),
            ], true),
            Print.Gap(6),
        ]);
        Block(flow, Say.Of("common.the-stove"), [input.Appliance.Length > 0 ? input.Appliance : Say.Of("notice.not-identified"), string.Join(", ", new[] { input.Customer, input.Address }.Where(w => w.Length > 0))], measure, Body);
        Block(flow, Say.Of("common.why"), [notice.Reason], measure, Lead);
        Block(flow, Say.Of("notice.until-it-is-released"), Forbidden, measure, Body, numbered: true);
        Block(flow, Say.Of("notice.if-you-smell-smoke-feel-ill-or"), [Say.Of("notice.everyone-out-at-once-call-the-emergency")], measure, Body);
        Block(flow, Say.Of("notice.who-may-release-it"), [notice.ReleasedBy.Length > 0 ? notice.ReleasedBy : Say.Of("notice.the-firm-named-below-after-cure-and")], measure, Body);
        flow.Space(18);
        var half = (measure - 22) / 2;
        var read = notice.ReadTo.Length == 0 ? Say.Of("notice.nobody-was-there-left-on-the-stove") : notice.Signed ? Say.Of("notice.read-to-and-signed", notice.ReadTo) : Say.Of("notice.read-to", notice.ReadTo);
        flow.PutSideBySide(
            (0, [Line(half, Say.Of("common.for", input.Technician, input.Firm.Name))]),
            (half + 22, [Line(half, read)]));
        flow.Put([.. Print.Paragraph(string.Join(" · ", new[] { input.Firm.Name, input.Firm.Contact }.Where(w => w.Length > 0)), measure, Head)]);
    }

    private static void Block(Flow flow, string title, ImmutableArray<string> paragraphs, double measure, Lettering lettering, bool numbered = false)
    {
        flow.Put([Print.Heading(title, measure, Head), .. paragraphs.Where(p => p.Length > 0).SelectMany((p, i) => Print.Paragraph(p, measure, lettering, numbered ? 18 : 0, numbered ? $"{i + 1}." : null).Append(Print.Gap(2)))]);
        flow.Space(11);
    }

    private static Strip Line(double width, string words)
    {
        var lines = Words.Wrap(words, width, Print.Small);
        return new Strip(44 + 14 * lines.Count, [new Line(new(0, 30), new(width, 30), Print.Rule), .. lines.Select((line, i) => new Text(new(0, 43 + 14 * i), line, Print.Small))]);
    }
}
