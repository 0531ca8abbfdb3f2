using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Papers;

/// <summary>One line of a quote.</summary>
/// <param name="What">The work or the part.</param>
/// <param name="Why">Why it is proposed; empty for none.</param>
/// <param name="Amount">What it would cost, with currency, as agreed or to be filled in; empty leaves a line to write on.</param>
public sealed record QuoteLine(string What, string Why, string Amount);

/// <summary>A quote.</summary>
/// <param name="Firm">Whose.</param>
/// <param name="Customer">For whom.</param>
/// <param name="Address">Where the stove stands.</param>
/// <param name="Appliance">The stove.</param>
/// <param name="Technician">Who proposes.</param>
/// <param name="At">When.</param>
/// <param name="Lines">What is proposed.</param>
/// <param name="Agreed">What was agreed or refused so far, in words.</param>
/// <param name="EngineVersion">Version of the engine.</param>
public sealed record QuoteInput(
    Firm Firm, string Customer, string Address, string Appliance, string Technician, DateTimeOffset At, ImmutableArray<QuoteLine> Lines, ImmutableArray<string> Agreed, string EngineVersion);

/// <summary>The quote: lines, a limit, three plain answers to tick, two signatures.</summary>
internal static class QuotePage
{
    private static readonly Lettering Title = new(26, true, Token.Ink);
    private static readonly Lettering Head = new(13, true, Token.Ink);
    private static readonly Lettering Body = new(12, Colour: Token.Ink);
    private static readonly FigureType Row = new(11);

    public static void Put(Flow flow, QuoteInput quote, PageFormat format)
    {
        var measure = format.Measure;
        flow.Put(
        [
            new Strip(38, [new Text(new(0, 24), Say.Of("common.quote"), Title), new Text(new(measure, 24), Print.Day(quote.At), Body, Anchor.End)], true),
            .. Print.Paragraph(string.Join(" · ", new[] { quote.Firm.Name, quote.Firm.Contact }.Where(w => w.Length > 0)), measure, Print.SmallStrong),
            .. Print.Paragraph(Say.Of("quote.for", string.Join(", ", new[] { quote.Customer, quote.Address }.Where(w => w.Length > 0))), measure, Print.Small),
            .. Print.Paragraph(quote.Appliance, measure, Print.Small),
            Print.Gap(12),
        ]);
        double amount = measure - 120;
        flow.PutTable(
            [Print.Heading(Say.Of("quote.what-we-propose"), measure, Head), new Strip(Row.Row(1), [new Text(new(measure, Row.Baseline), Say.Of("quote.amount"), Row.Fine, Anchor.End)], true)],
            [.. quote.Lines.Append(new(Say.Of("quote.most-it-may-come-to-without-asking"), "", "")).Select((line, i) => Line(line, measure, amount, last: i == quote.Lines.Length))]);
        flow.Space(12);
        if (quote.Agreed.Length > 0)
        {
            flow.Put([Print.Heading(Say.Of("quote.agreed-so-far"), measure, Head), .. quote.Agreed.SelectMany(a => Print.Paragraph(a, measure, Body))]);
            flow.Space(12);
        }

        flow.Put(
        [
            Print.Heading(Say.Of("quote.your-answer"), measure, Head),
            .. ((string[])[Say.Of("quote.yes-do-this-work"), Say.Of("quote.yes-but-ask-me-again-before-it"), Say.Of("quote.no-i-was-told-what-it-means")]).Select(words => new Strip(24,
                [new Rect(new Box(1, 3, 12, 12), new Role("tick", null, Token.Ink, 1)), new Text(new(22, 13.5), words, Body)])),
        ]);
        flow.Space(20);
        var half = (measure - 22) / 2;
        flow.PutSideBySide((0, [Sign(half, quote.Customer.Length > 0 ? Say.Of("quote.date", quote.Customer) : Say.Of("common.customer-date"))]), (half + 22, [Sign(half, Say.Of("common.for", quote.Technician, quote.Firm.Name))]));
        flow.Put([.. Print.Paragraph(Say.Of("quote.a-quote-is-no-bill-what-is"), measure, Print.Fine)]);
    }

    private static Strip Line(QuoteLine line, double measure, double amount, bool last)
    {
        var what = Words.Wrap(line.What, amount - 12, last ? Row.Strong : Row.Text);
        var why = line.Why.Length > 0 ? Words.Wrap(line.Why, amount - 12, Row.Fine) : [];
        var height = Row.Row(what.Count + why.Count) + 8;
        return new Strip(height,
        [
            new Line(new(0, 0), new(measure, 0), Print.Hairline),
            .. what.Select((words, i) => new Text(new(0, Row.Baseline + 4 + i * Row.Line), words, last ? Row.Strong : Row.Text)),
            .. why.Select((words, i) => new Text(new(0, Row.Baseline + 4 + (what.Count + i) * Row.Line), words, Row.Fine)),
            line.Amount.Length > 0 ? new Text(new(measure, Row.Baseline + 4), line.Amount, Row.Strong, Anchor.End) : new Line(new(amount + 20, Row.Baseline + 6), new(measure, Row.Baseline + 6), Print.Rule),
        ]);
    }

    private static Strip Sign(double width, string words) => new(62, [new Line(new(0, 30), new(width, 30), Print.Rule), new Text(new(0, 43), words, Print.Small)]);
}
