using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Papers;

/// <summary>The papers beside the report, each from the same input, each depending on its content alone.</summary>
public static class Papers
{
    /// <summary>A6, 105 × 148 mm (ISO 216): the size that hangs on a door.</summary>
    public static PageFormat A6 { get; } = new("A6", 105 / 25.4 * 72, 148 / 25.4 * 72) { Side = 20, Top = 18 };

    /// <summary>The stop-use notice alone, to be left on the stove and signed.</summary>
    /// <exception cref="InvalidOperationException">No notice stands.</exception>
    public static Paper StopUseNotice(ReportInput input, PageFormat format)
    {
        ArgumentNullException.ThrowIfNull(input);
        var notice = input.Notice ?? throw new InvalidOperationException("No stop-use notice stands in this visit; issue one first.");
        var flow = new Flow(format);
        NoticePage.Put(flow, input, notice, format);
        return Write(flow, format, input, Say.Of("common.stop-use-notice"));
    }

    /// <summary>The tag for the door or plug: stop use where a notice stands, else when it was serviced and when it is due.</summary>
    public static Paper DoorTag(ReportInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return Write([DoorTagPage.Draw(input, A6)], input, Say.Of("common.door-tag"));
    }

    /// <summary>What the household looks after every week, on one page.</summary>
    public static Paper HandoverCard(ReportInput input, PageFormat format)
    {
        ArgumentNullException.ThrowIfNull(input);
        var flow = new Flow(format);
        HandoverCardPage.Put(flow, input, format);
        return Write(flow, format, input, Say.Of("papers.weekly-care"));
    }

    /// <summary>The visit as a form to fill in by hand, for a dead battery.</summary>
    public static Paper BlankForm(FormInput form, PageFormat format)
    {
        ArgumentNullException.ThrowIfNull(form);
        var flow = new Flow(format);
        BlankFormPage.Put(flow, form, format);
        return Write(Footed(flow, format, form.Title), new PdfWords(form.Title, form.Firm.Name, form.Pattern?.Name ?? "", form.EngineVersion, DateTimeOffset.UnixEpoch, Say.Language.Code) { Colour = form.Firm.Colour });
    }

    /// <summary>What is proposed, what it would cost, and the customer's answer in writing.</summary>
    public static Paper Quote(QuoteInput quote, PageFormat format)
    {
        ArgumentNullException.ThrowIfNull(quote);
        var flow = new Flow(format);
        QuotePage.Put(flow, quote, format);
        return Write(Footed(flow, format, Say.Of("common.quote")), new PdfWords(Say.Of("papers.quote", quote.Address, Print.Day(quote.At)), quote.Firm.Name, quote.Appliance, quote.EngineVersion, quote.At, Say.Language.Code) { Colour = quote.Firm.Colour });
    }

    private static Paper Write(Flow flow, PageFormat format, ReportInput input, string title) => Write(Footed(flow, format, title), input, title);

    private static Paper Write(ImmutableArray<Scene> pages, ReportInput input, string title) =>
        Write(pages, new PdfWords($"{title}, {input.Address}, {Print.Day(input.At)}", input.Firm.Name, input.Appliance, input.EngineVersion, input.At, input.Language) { Colour = input.Firm.Colour });

    private static Paper Write(ImmutableArray<Scene> pages, PdfWords words) => new(pages, [], words);

    private static ImmutableArray<Scene> Footed(Flow flow, PageFormat format, string title) =>
        [.. flow.Pages.Select((shapes, i) => new Scene($"page{i + 1}", new Box(0, 0, format.Width, format.Height), title, "",
            [.. shapes, .. flow.Pages.Count > 1 ? [new Text(new(format.Width - format.Side, format.Height - 30), Say.Of("common.page-of", title, i + 1, flow.Pages.Count), Print.Foot, Anchor.End)] : Array.Empty<Shape>()]))];
}
