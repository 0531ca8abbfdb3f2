using Emberwright.Reports.Pages;
using UglyToad.PdfPig;
using Xunit;

namespace Emberwright.Reports.Tests;

public class AbsurdReportTests
{
    [Theory]
    [InlineData("US Letter")]
    [InlineData("A4")]
    public void Too_much_text_goes_on_to_further_pages_and_none_is_lost(string paper)
    {
        var input = AbsurdReport.Input;
        var pdf = ReportPdf.Render(input, ReportPdfTests.Paper(paper));
        var text = ReadBack.All(pdf);
        foreach (var sentence in input.Found.Take(12).Concat(input.Did).Concat(input.ShouldDo).Concat(input.Limitations)) ReportPdfTests.AssertSays(sentence, text);
        foreach (var row in input.Readings) Assert.Contains($"−{-row.Found} Pa", text);
        foreach (var suspect in input.Suspects) ReportPdfTests.AssertSays(suspect.Because[0], text);
        Assert.Equal(1, Count(text.Replace(" ", ""), AbsurdReport.LongWord + AbsurdReport.LongWord));
    }

    [Theory]
    [InlineData("US Letter")]
    [InlineData("A4")]
    public void Nothing_is_drawn_outside_the_paper_s_margins(string paper)
    {
        var format = ReportPdfTests.Paper(paper);
        foreach (var input in new[] { AbsurdReport.Input, AbsurdReport.Bare, SampleReport.Cleaned, SampleReport.Limited, SampleReport.Refused })
        {
            using var document = PdfDocument.Open(ReportPdf.Render(input, format));
            foreach (var page in document.GetPages())
                foreach (var letter in page.Letters)
                {
                    Assert.InRange(letter.StartBaseLine.X, 30, format.Width - 30);
                    Assert.InRange(letter.EndBaseLine.X, 30, format.Width - 24);
                    Assert.InRange(letter.StartBaseLine.Y, 25, format.Height - 30);
                }
        }
    }

    [Fact]
    public void No_two_texts_lie_on_each_other()
    {
        foreach (var input in new[] { AbsurdReport.Input, SampleReport.Cleaned, SampleReport.Limited, SampleReport.Refused })
        {
            using var document = PdfDocument.Open(ReportPdf.Render(input, PageFormat.Letter));
            foreach (var page in document.GetPages())
            {
                var words = page.GetWords().Where(w => w.Text.Length > 1).Select(w => (w.Text, Box: w.BoundingBox)).ToList();
                for (var i = 0; i < words.Count; i++)
                    for (var k = i + 1; k < words.Count; k++)
                    {
                        var width = Math.Min(words[i].Box.Right, words[k].Box.Right) - Math.Max(words[i].Box.Left, words[k].Box.Left);
                        var height = Math.Min(words[i].Box.Top, words[k].Box.Top) - Math.Max(words[i].Box.Bottom, words[k].Box.Bottom);
                        Assert.False(width > 1.5 && height > 1.5, $"'{words[i].Text}' lies on '{words[k].Text}' on page {page.Number} of {input.Heading}.");
                    }
            }
        }
    }

    [Fact]
    public void A_photo_that_is_missing_or_broken_leaves_its_caption_and_says_so()
    {
        var text = ReadBack.All(ReportPdf.Render(AbsurdReport.Input, PageFormat.Letter));
        Assert.Contains("This photo is not on this device.", text);
        Assert.Contains("photo cannot be read", text);
        for (var i = 1; i <= 5; i++) Assert.Contains($"Photo {i}", text);
    }

    [Fact]
    public void Photos_are_in_the_file_as_pictures()
    {
        var pdf = ReportPdf.Render(SampleReport.Cleaned with { Photos = [new("A", Pixels.Jpeg), new("B", Pixels.Png)] }, PageFormat.Letter);
        using var document = PdfDocument.Open(pdf);
        var images = document.GetPage(document.NumberOfPages).GetImages().ToList();
        Assert.Contains(images, i => (i.WidthInSamples, i.HeightInSamples) == (8, 6));
        Assert.Contains(images, i => (i.WidthInSamples, i.HeightInSamples) == (1, 1));
        Assert.All(images, i => Assert.Equal(i.WidthInSamples / (double)i.HeightInSamples, i.BoundingBox.Width / i.BoundingBox.Height, 2));
    }

    [Fact]
    public void Next_to_nothing_still_makes_a_report()
    {
        var pages = ReadBack.Pages(ReportPdf.Render(AbsurdReport.Bare, PageFormat.A4));
        Assert.Contains("Not yet.", pages[0]);
        Assert.Equal(2, pages.Count);
    }

    [Theory]
    [InlineData("Łukasz Żółć, Ångström & Ćosić, Jürgen Groß, São João, Ňuňez Ő Ű", true)]
    [InlineData("Иван Петров", false)]
    [InlineData("山田 太郎", false)]
    [InlineData("يوسف", false)]
    [InlineData("Ayşe 🔥 Öz", false)]
    [InlineData("\uD83D", false)]
    public void A_name_in_any_script_is_printed_or_visibly_replaced(string name, bool covered)
    {
        var text = ReadBack.All(ReportPdf.Render(SampleReport.Cleaned with { Customer = name }, PageFormat.Letter));
        if (covered) ReportPdfTests.AssertSays(name, text);
        else Assert.Contains('\uFFFD', text);
        Assert.Equal(!covered, text.Contains("Letters this report"));
    }

    [Fact]
    public void An_accent_typed_apart_from_its_letter_is_printed_as_one()
    {
        var text = ReadBack.All(ReportPdf.Render(SampleReport.Cleaned with { Customer = "E\u0301lodie Mu\u0308ller" }, PageFormat.Letter));
        Assert.Contains("Élodie Müller", text);
    }

    [Fact]
    public void The_signs_of_the_trade_survive()
    {
        const string signs = "−12.5 Pa · 92 Ω · 21 °C · CO₂ ±0.3 % – 5 µm … “yes” ‘no’ ≤ ≥ ½ 3′ 4″ × → €";
        var text = ReadBack.All(ReportPdf.Render(SampleReport.Cleaned with { Limitations = [signs] }, PageFormat.Letter));
        ReportPdfTests.AssertSays(signs, text);
    }

    private static int Count(string text, string part) => (text.Length - text.Replace(part, "").Length) / part.Length;
}
