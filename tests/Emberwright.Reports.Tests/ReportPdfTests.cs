using System.Text;
using System.Xml.Linq;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Stove.Quantities;
using UglyToad.PdfPig;
using Xunit;

namespace Emberwright.Reports.Tests;

public class ReportPdfTests
{
    public static TheoryData<string, UnitSystem> Formats => new()
    {
        { "US Letter", UnitSystem.Si }, { "US Letter", UnitSystem.Us }, { "A4", UnitSystem.Si }, { "A4", UnitSystem.Us },
    };

    [Theory]
    [MemberData(nameof(Formats))]
    public void Every_figure_of_the_input_can_be_read_in_the_file(string paper, UnitSystem system)
    {
        var input = SampleReport.Cleaned with { Units = system };
        var text = ReadBack.All(ReportPdf.Render(input, Paper(paper)));
        foreach (var row in input.Readings)
        {
            Assert.Contains(row.Name, text);
            foreach (var value in new[] { row.Found, row.Left, row.High }.OfType<double>())
                Assert.Contains(QuantityFormat.Format(value, row.Measure, system, row.Measure == Stove.Measure.Pressure ? 1 : null, row.Measure == Stove.Measure.Pressure), text);
            if (row.FoundVerdict is not null) Assert.Contains(row.FoundVerdict, text);
        }

        foreach (var area in input.Areas)
            foreach (var r in new[] { area.Before!.Value, area.After!.Value })
                Assert.Contains($"{r.Word} {100 * r.Likely:F0} ({100 * r.Low:F0}–{100 * r.High:F0})", text);
        foreach (var suspect in input.Suspects)
        {
            Assert.Contains($"{100 * suspect.Probability:F0} %", text);
            foreach (var because in suspect.Because) AssertSays(because, text);
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Every_sentence_of_the_input_can_be_read_in_the_file(string paper, UnitSystem system)
    {
        var input = SampleReport.Cleaned with { Units = system };
        var text = ReadBack.All(ReportPdf.Render(input, Paper(paper)));
        string[] said =
        [
            input.Firm.Name, input.Firm.Contact, input.Customer, input.Address, input.Heading, input.Technician, input.Appliance, input.Answer.Reason,
            .. input.Found, .. input.Did, .. input.ShouldDo, input.Next!.Headline, input.Next.Words, .. input.Site, .. input.SuspectNotes,
            .. input.Instruments, .. input.Limitations, .. input.Sources, .. input.Parts, .. input.Proofs.Select(p => p.Name), "24 November 2026",
        ];
        foreach (var sentence in said) AssertSays(sentence, text);
        Assert.Contains(input.Seal!, text.Replace(" ", ""));
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void An_ordinary_report_is_one_page_for_the_customer_and_one_of_figures(string paper, UnitSystem system)
    {
        var pages = ReadBack.Pages(ReportPdf.Render(SampleReport.Cleaned with { Units = system }, Paper(paper)));
        Assert.Equal(2, pages.Count);
        Assert.Contains("May I use my stove?", pages[0]);
        Assert.Contains("The figures", pages[1]);
        Assert.Contains("Page 1 of 2", pages[0]);
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        var first = ReportPdf.Render(SampleReport.Cleaned, PageFormat.Letter);
        var second = ReportPdf.Render(SampleReport.Cleaned, PageFormat.Letter);
        Assert.True(first.AsSpan().SequenceEqual(second));
    }

    [Fact]
    public void Another_input_gets_other_ids()
    {
        static string IdOf(byte[] pdf) => Encoding.Latin1.GetString(pdf) is var s && s.LastIndexOf("/ID[<", StringComparison.Ordinal) is var at ? s.Substring(at + 5, 32) : "";
        var one = IdOf(ReportPdf.Render(SampleReport.Cleaned, PageFormat.Letter));
        var other = IdOf(ReportPdf.Render(SampleReport.Refused, PageFormat.Letter));
        Assert.NotEqual(one, other);
        Assert.NotEqual(new string('0', 32), one);
    }

    [Fact]
    public void The_file_says_whose_it_is_when_and_in_which_language()
    {
        using var document = PdfDocument.Open(ReportPdf.Render(SampleReport.Cleaned, PageFormat.Letter));
        Assert.Equal("Service report, 14 Quarry Lane, Sorrel Mills, 24 November 2026", document.Information.Title);
        Assert.Equal("Tamarack & Vale Hearth Service", document.Information.Author);
        Assert.StartsWith("D:20261124180500", document.Information.CreationDate);
        var lang = document.Structure.Catalog.CatalogDictionary.Data["Lang"];
        Assert.Contains("en", lang.ToString());
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["May I use my stove?", "The figures"], bookmarks.GetNodes().Select(n => n.Title));
    }

    [Theory]
    [InlineData("Tamarack & Vale Hearth Service")]
    [InlineData("Ash <& Sons> Hearth, Élodie's & Jörg's")]
    [InlineData("&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&&")]
    public void The_xmp_packet_is_sound_xml(string firm)
    {
        var pdf = ReportPdf.Render(SampleReport.Cleaned with { Firm = new(firm, "") }, PageFormat.Letter);
        var from = pdf.AsSpan().LastIndexOf("<x:xmpmeta"u8);
        var to = pdf.AsSpan().LastIndexOf("</x:xmpmeta>"u8) + "</x:xmpmeta>".Length;
        var packet = XDocument.Parse(Encoding.UTF8.GetString(pdf.AsSpan(from, to - from)));
        var creator = packet.Descendants(XName.Get("creator", "http://purl.org/dc/elements/1.1/")).Single().Value;
        if (firm.Length < 60) Assert.Equal(firm, creator.Trim());
        using var document = PdfDocument.Open(pdf);
        Assert.Equal(firm, document.Information.Author);
    }

    [Fact]
    public void The_answer_decides_the_first_words()
    {
        Assert.Contains("Yes, with limits.", ReadBack.Pages(ReportPdf.Render(SampleReport.Limited, PageFormat.A4))[0]);
        var refused = ReadBack.Pages(ReportPdf.Render(SampleReport.Refused, PageFormat.Letter))[0];
        Assert.Contains("No.", refused);
        Assert.True(refused.IndexOf("Until then", StringComparison.Ordinal) < refused.IndexOf("What we found", StringComparison.Ordinal));
        Assert.Contains("was not there to sign", refused);
        Assert.Contains("not sealed", refused);
    }

    [Fact]
    public void Look()
    {
        if (Environment.GetEnvironmentVariable("LOOK") is not { } folder) return;
        File.WriteAllBytes(Path.Combine(folder, "cleaned-letter.pdf"), ReportPdf.Render(SampleReport.Cleaned, PageFormat.Letter));
        File.WriteAllBytes(Path.Combine(folder, "limited-a4.pdf"), ReportPdf.Render(SampleReport.Limited, PageFormat.A4));
        File.WriteAllBytes(Path.Combine(folder, "refused-letter.pdf"), ReportPdf.Render(SampleReport.Refused, PageFormat.Letter));
        File.WriteAllBytes(Path.Combine(folder, "absurd-letter.pdf"), ReportPdf.Render(AbsurdReport.Input, PageFormat.Letter));
        File.WriteAllBytes(Path.Combine(folder, "bare-a4.pdf"), ReportPdf.Render(AbsurdReport.Bare, PageFormat.A4));
        foreach (var (name, paper) in EveryPaper.All)
            foreach (var (format, units) in new[] { (PageFormat.Letter, UnitSystem.Us), (PageFormat.A4, UnitSystem.Si) })
                File.WriteAllBytes(Path.Combine(folder, $"{name}-{(units == UnitSystem.Us ? "letter" : "a4")}.pdf"), paper(format, units).Pdf());
    }

    internal static PageFormat Paper(string name) => name == PageFormat.A4.Name ? PageFormat.A4 : PageFormat.Letter;

    // Lines break between words; whatever stands between two lines' words is no part of the sentence.
    internal static void AssertSays(string sentence, string text)
    {
        var at = 0;
        foreach (var word in sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var next = text.IndexOf(word, at, StringComparison.Ordinal);
            Assert.True(next >= 0, $"'{word}' of '{sentence}' was not found in the file.");
            at = next + word.Length;
        }
    }
}
