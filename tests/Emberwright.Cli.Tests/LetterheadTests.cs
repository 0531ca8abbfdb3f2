using System.Text;
using Xunit;

namespace Emberwright.Cli.Tests;

/// <summary>The firm's letterhead beside the visit: what is taken, and what is refused with a remedy.</summary>
public sealed class LetterheadTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("emberwright-letterhead");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_png_logo_is_printed()
    {
        // One black pixel.
        var png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
        var run = Print("logo.png", png, "\"#3b5a4a\"");
        Assert.Equal((ExitCodes.Ok, ""), (run.Code, run.Error));
        Assert.Contains("/Subtype/Image", Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(_folder.FullName, "out.pdf"))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>")]
    [InlineData("logo.gif", "GIF89a")]
    [InlineData("logo.png", "")]
    public void Another_kind_of_logo_is_refused_by_name_with_the_kinds_that_are_taken(string file, string content)
    {
        var run = Print(file, Encoding.ASCII.GetBytes(content), "\"\"");
        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains($"logo is '{file}', which is neither PNG nor JPEG", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder.FullName, "out.pdf")));
    }

    [Fact]
    public void A_colour_that_is_none_is_refused()
    {
        Assert.Contains("write it as #RRGGBB", Print("", [], "\"green\"").Error, StringComparison.Ordinal);
        Assert.Contains("cannot be read as a letterhead", Print("missing.png", null, "\"\"").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_speak_the_language_of_a_translation()
    {
        var file = Path.Combine(_folder.FullName, "fr.json");
        File.WriteAllText(file, """{"language": "fr", "words": {"papers.weekly-care": "Chaque semaine", "card.looking-after-your-stove": "Prendre soin de votre poêle"}}""");
        var path = Path.Combine(_folder.FullName, "card.pdf");
        var run = Run.Of("report", Run.Demo("healthy-service"), "--paper", "card", "--language", file, "-o", path);
        Assert.Equal((ExitCodes.Ok, ""), (run.Code, run.Error));
        Assert.Contains("/Lang(fr)", Encoding.Latin1.GetString(File.ReadAllBytes(path)).Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        var english = Path.Combine(_folder.FullName, "english.pdf");
        Run.Of("report", Run.Demo("healthy-service"), "--paper", "card", "-o", english);
        Assert.NotEqual(File.ReadAllBytes(english), File.ReadAllBytes(path));
    }

    [Fact]
    public void A_translation_that_is_none_is_refused_by_name()
    {
        var file = Path.Combine(_folder.FullName, "fr.json");
        File.WriteAllText(file, """{"language": "fr", "words": {"answer.maybe": "Peut-être."}}""");
        var run = Run.Of("report", Run.Demo("healthy-service"), "--language", file, "-o", Path.Combine(_folder.FullName, "x.pdf"));
        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("words.answer.maybe is no name of a sentence", run.Error, StringComparison.Ordinal);
    }

    private Run Print(string logo, byte[]? content, string colour)
    {
        if (content is not null && logo.Length > 0) File.WriteAllBytes(Path.Combine(_folder.FullName, logo), content);
        var firm = Path.Combine(_folder.FullName, "firm.json");
        File.WriteAllText(firm, $"{{\"name\": \"Tamarack & Vale Hearth Service\", \"contact\": \"555 0142\", \"colour\": {colour}, \"logo\": \"{logo}\"}}");
        return Run.Of("report", Run.Demo("healthy-service"), "--firm", firm, "-o", Path.Combine(_folder.FullName, "out.pdf"), "--paper", "report");
    }
}
