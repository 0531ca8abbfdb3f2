using System.Text;
using Emberwright.Reports.Fonts;
using Xunit;

namespace Emberwright.Reports.Tests;

public class FontTests
{
    [Theory]
    [InlineData("SemiBold", true)]
    [InlineData("Regular", false)]
    public void Widths_agree_with_the_font_s_own_table(string weight, bool semiBold)
    {
        // Advance widths read from the hmtx table with fontTools 4.38, in thousandths of an em.
        var face = semiBold ? Typeface.SemiBold : Typeface.Regular;
        Assert.EndsWith(weight, face.Name);
        Assert.Equal(600, 1000 * face.Width("0", 1), 6);
        Assert.Equal(600, 1000 * face.Width("−", 1), 6);
        Assert.Equal(semiBold ? 672 : 641, 1000 * face.Width("A", 1), 6);
        Assert.Equal(236, 1000 * face.Width(" ", 1), 6);
    }

    [Fact]
    public void Figures_are_tabular()
    {
        foreach (var face in new[] { Typeface.Regular, Typeface.SemiBold })
            foreach (var figure in "0123456789−+") Assert.Equal(face.Width("0", 1), face.Width(figure.ToString(), 1));
    }

    [Fact]
    public void A_text_is_as_wide_as_its_letters()
    {
        const string text = "Blower inlet −79 Pa, too strong";
        Assert.Equal(text.Sum(c => Typeface.Regular.Width(c.ToString(), 12)), Typeface.Regular.Width(text, 12), 9);
    }

    [Fact]
    public void Every_accent_that_joins_does_so_as_the_runtime_s_own_composition()
    {
        // Independent source: Unicode canonical decompositions, here by a hand-picked set across the cut.
        foreach (var (apart, joined) in new[] { ("A\u030A", "Å"), ("c\u0327", "ç"), ("s\u030C", "š"), ("o\u030B", "ő"), ("g\u0306", "ğ"), ("I\u0307", "İ"), ("n\u0303", "ñ"), ("z\u0307", "ż"), ("e\u0328", "ę") })
            Assert.Equal(joined, Printable.Text(apart));
    }

    [Fact]
    public void What_cannot_be_drawn_becomes_a_box_and_is_named()
    {
        Assert.Equal("\uFFFD\uFFFD", Printable.Text("山田"));
        Assert.Equal([new Rune('山'), new Rune('田')], Printable.Missing("山田 山"));
        Assert.True(Typeface.Regular.Covers(new Rune(0xFFFD)));
    }

    [Fact]
    public void Invisible_marks_go_and_exotic_spaces_become_plain()
    {
        Assert.Equal("ab c\u00A0d e", Printable.Text("a\u200Bb\u2009c\u202Fd\te"));
        Assert.Equal("", Printable.Text(null));
    }

    [Fact]
    public void A_family_that_is_not_embedded_is_named()
    {
        var message = Assert.Throws<InvalidOperationException>(() => new EmbeddedFonts().ResolveTypeface("Some Other Sans", false, false)).Message;
        Assert.Contains("Some Other Sans", message);
        Assert.Contains("Emberwright Sans", message);
    }

    [Fact]
    public void A_font_file_without_its_tables_is_named()
    {
        var file = new byte[32];
        var message = Assert.Throws<InvalidDataException>(() => new TrueTypeMetrics("Broken", file)).Message;
        Assert.Contains("Broken", message);
        Assert.Contains("head", message);
    }

    [Fact]
    public void The_licence_lies_beside_the_fonts()
    {
        using var stream = typeof(Typeface).Assembly.GetManifestResourceStream("OFL.txt");
        Assert.NotNull(stream);
        Assert.Contains("SIL OPEN FONT LICENSE", new StreamReader(stream).ReadToEnd());
    }
}
