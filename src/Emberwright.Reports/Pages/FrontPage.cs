using System.Buffers.Binary;
using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>
/// The page for the customer: may I use my stove, what was found, what was done, what to do, when we come again.
/// </summary>
internal static class FrontPage
{
    private const double Gutter = 22;
    private const double LogoHeight = 34;

    public static void Put(Flow flow, ReportInput input, ReportPictures pictures, PageFormat format, FrontType type)
    {
        var measure = format.Measure;
        var half = (measure - Gutter) / 2;
        Letterhead(flow, input, measure);
        flow.Mark(Say.Of("common.may-i-use-my-stove"));
        flow.Put(AnswerLine.Strips(input.Answer, measure, type));
        flow.Space(14);
        var blocks = Blocks(input, half, type);
        flow.PutSideBySide((0, Stack(blocks.Where((_, i) => i % 2 == 0))), (half + Gutter, Stack(blocks.Where((_, i) => i % 2 == 1))));
        flow.Space(13);
        Pictures(flow, input, pictures, half, type);
        Signatures(flow, input, measure, half);
    }

    private static void Letterhead(Flow flow, ReportInput input, double measure)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var left = 0.0;
        if (!input.Firm.Logo.IsDefaultOrEmpty)
        {
            var wide = LogoWidth(input.Firm.Logo);
            shapes.Add(new Photo(input.Firm.Logo, new Box(0, 0, wide, LogoHeight), input.Firm.Name));
            left = wide + 9;
        }

        var half = (measure - left) / 2 - 8;
        List<(string, Lettering)> firm = [.. Lines(input.Firm.Name, half, Print.SmallStrong), .. Lines(input.Firm.Contact, half, Print.Small)];
        List<(string, Lettering)> customer =
        [
            .. Lines(Say.Of("front.for", input.Heading), half, Print.Small),
            .. Lines(input.Customer, half, Print.SmallStrong),
            .. AddressAndDay(input, half),
        ];
        if (Print.Small.Width(Say.Of("front.for-2", input.Heading)) + Print.SmallStrong.Width(input.Customer) <= half) customer.RemoveRange(0, 1);
        var joined = customer[0].Item2 == Print.SmallStrong;
        for (var i = 0; i < firm.Count; i++) shapes.Add(new Text(new(left, 13 + 14 * i), firm[i].Item1, firm[i].Item2));
        for (var i = 0; i < customer.Count; i++) shapes.Add(new Text(new(measure, 13 + 14 * i), customer[i].Item1, customer[i].Item2, Anchor.End));
        if (joined) shapes.Add(new Text(new(measure - Print.SmallStrong.Width(input.Customer) - Print.Small.Width("\u00A0"), 13), Say.Of("front.for", input.Heading), Print.Small, Anchor.End));
        var height = Math.Max(left > 0 ? 40 : 0, 14 * Math.Max(firm.Count, customer.Count) + 10);
        shapes.Add(new Line(new(0, height), new(measure, height), Print.Letterhead));
        flow.Put(new Strip(height + 13, shapes.ToImmutable()));
    }

    // A PNG's own proportions from its header (PNG specification, third edition, 11.2.1), within a fifth of the line; another file's square.
    private static double LogoWidth(ImmutableArray<byte> logo)
    {
        if (logo.Length < 24 || logo[0] != 0x89) return LogoHeight;
        double width = BinaryPrimitives.ReadUInt32BigEndian(logo.AsSpan(16, 4)), height = BinaryPrimitives.ReadUInt32BigEndian(logo.AsSpan(20, 4));
        return height > 0 ? Math.Clamp(LogoHeight * width / height, 12, 110) : LogoHeight;
    }

    // On one line where there is room, else the day on its own.
    private static IEnumerable<(string, Lettering)> AddressAndDay(ReportInput input, double half)
    {
        var day = Print.Day(input.At);
        var both = input.Address.Length > 0 ? $"{input.Address} · {day}" : day;
        return Print.Small.Width(both) <= half ? [(both, Print.Small)] : [.. Lines(input.Address, half, Print.Small), (day, Print.Small)];
    }

    private static IEnumerable<(string, Lettering)> Lines(string words, double measure, Lettering lettering) =>
        Words.Wrap(words, measure, lettering).Select(line => (line, lettering));

    // Each column by itself, so that a short block leaves no hole under it.
    private static List<Strip> Stack(IEnumerable<IReadOnlyList<Strip>> blocks) => [.. blocks.SelectMany((b, i) => i == 0 ? b : [Print.Gap(13), .. b])];

    private static List<IReadOnlyList<Strip>> Blocks(ReportInput input, double half, FrontType type)
    {
        var blocks = new List<IReadOnlyList<Strip>>();
        void Block(string title, IEnumerable<Strip> strips)
        {
            var made = strips.ToList();
            if (made.Count > 0) blocks.Add([Print.Heading(title, half, type.Head), .. made]);
        }

        var no = input.Answer.Use == Use.No;
        if (no) Block(input.Next is { Return: true } ? Say.Of("front.until-then") : Say.Of("front.what-you-must-do-now"), Numbered(input.ShouldDo, half, type));
        Block(input.FoundTitle, Paragraphs(input.Found, half, type));
        Block(input.DidTitle, Paragraphs(input.Did, half, type));
        if (!no) Block(Say.Of("front.what-you-should-do"), Numbered(input.ShouldDo, half, type));
        if (input.Next is { } next) Block(next.Return ? Say.Of("common.we-come-again") : Say.Of("common.next-service"), Due(next, half, type));
        return blocks;
    }

    private static IEnumerable<Strip> Paragraphs(ImmutableArray<string> paragraphs, double measure, FrontType type) =>
        paragraphs.SelectMany((p, i) => i == 0 ? Print.Paragraph(p, measure, type.Body) : [Print.Gap(3), .. Print.Paragraph(p, measure, type.Body)]);

    private static IEnumerable<Strip> Numbered(ImmutableArray<string> items, double measure, FrontType type) =>
        items.Length == 1
            ? Print.Paragraph(items[0], measure, type.Body)
            : items.SelectMany((p, i) => Print.Paragraph(p, measure, type.Body, 16, $"{i + 1}.").Append(Print.Gap(2)));

    private static IEnumerable<Strip> Due(NextDue next, double measure, FrontType type)
    {
        foreach (var s in Print.Paragraph(next.Headline, measure, type.LeadStrong)) yield return s;
        if (next is { From: { } from, Likely: { } likely, To: { } to })
        {
            yield return Print.Gap(3);
            yield return Print.Picture(DueSpan.Draw(from, likely, to, measure / 0.78), measure, 0.78);
        }

        if (next.Words.Length > 0)
            foreach (var s in Print.Paragraph(next.Words, measure, type.Body)) yield return s;
    }

    private static void Pictures(Flow flow, ReportInput input, ReportPictures pictures, double half, FrontType type)
    {
        var columns = new List<IReadOnlyList<Strip>>();
        if (pictures.Pair is { } pair)
        {
            columns.Add(
            [
                Print.Heading(Say.Of("front.how-air-moved-through-the-stove"), half, type.Head),
                Print.Picture(pair, half, 0.76),
                Print.Gap(5),
                .. Print.Paragraph(Say.Of("front.the-band-is-a-healthy-stove-like"), half, Print.Fine),
            ]);
        }

        if (pictures.Areas is { } areas)
        {
            columns.Add(
            [
                Print.Heading(Say.Of("common.how-blocked-each-part-was"), half, type.Head),
                Print.Gap(4),
                Print.Picture(areas, half, 0.76),
                Print.Gap(5),
                .. Print.Paragraph(Caption(input.Areas), half, Print.Fine),
            ]);
        }

        if (columns.Count > 0) flow.PutSideBySide([.. columns.Select((c, i) => (i * (half + Gutter), c))]);
    }

    private static string Caption(ImmutableArray<AreaChange> areas)
    {
        List<string> said = [Say.Of("front.dot-after-ring-or-diamond-before-grey")];
        if (areas.Any(a => a.Limit is not null)) said.Add(Say.Of("front.upright-where-the-stove-would-stop-or"));
        if (areas.Length > ReportPictures.Shown) said.Add(Say.Of("front.the-least-blocked-are-left-out-all"));
        return string.Join(' ', said);
    }

    private static void Signatures(Flow flow, ReportInput input, double measure, double half)
    {
        if (input.Signatures.IsEmpty) return;
        flow.Space(10);
        for (var i = 0; i < input.Signatures.Length; i += 2)
        {
            var pair = input.Signatures.Skip(i).Take(2).Select((s, c) => (c * (half + Gutter), (IReadOnlyList<Strip>)[Signature(s, half)]));
            flow.PutSideBySide([.. pair]);
        }
    }

    private static Strip Signature(Signed signed, double half)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        if (!signed.Image.IsDefaultOrEmpty) shapes.Add(new Photo(signed.Image, new Box(2, 0, Math.Min(150, half - 4), 30), Say.Of("front.signature-of", signed.Name)));
        shapes.Add(new Line(new(0, 33), new(half, 33), Print.Rule));
        var words = signed.Absent ? Say.Of("front.was-not-there-to-sign", signed.Name, signed.Role)
            : signed.At is { } at ? $"{signed.Name}, {signed.Role}, {Print.Time(at)}" : Say.Of("front.not-signed", signed.Name, signed.Role);
        var lines = Words.Wrap(words, half, Print.Small);
        for (var i = 0; i < lines.Count; i++) shapes.Add(new Text(new(0, 46 + 14 * i), lines[i], Print.Small));
        return new Strip(42 + 14 * lines.Count, shapes.ToImmutable());
    }
}
