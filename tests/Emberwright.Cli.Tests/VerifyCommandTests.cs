using System.Text;
using Xunit;

namespace Emberwright.Cli.Tests;

/// <summary>Whether a report and a visit file belong together: what does holds, and every change to either is said.</summary>
public class VerifyCommandTests
{
    [Theory]
    [InlineData("--units", "us")]
    [InlineData("--units", "si")]
    [InlineData("--page", "letter")]
    public void A_report_printed_from_the_file_holds_on_any_paper_and_in_any_units(string option, string value)
    {
        using var signed = new SignedVisit("healthy-service", option, value);
        Assert.Equal(ExitCodes.Ok, signed.Print.Code);
        var run = Run.Of("verify", signed.Pdf, signed.File);
        Assert.Equal((ExitCodes.Ok, ""), (run.Code, run.Error));
        Assert.StartsWith("Yes: the report and the visit file belong together", run.Out, StringComparison.Ordinal);
        Assert.Contains("pages are as this program prints them", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void As_json_it_says_the_same()
    {
        using var signed = new SignedVisit();
        var json = Run.Of("verify", signed.Pdf, signed.File, "--json").Json;
        Assert.True(json.GetProperty("holds").GetBoolean());
        Assert.True(json.GetProperty("reasons").GetArrayLength() >= 3);
    }

    [Fact]
    public void A_report_whose_words_were_changed_does_not_pass()
    {
        using var signed = new SignedVisit();
        // Somebody edits what the customer told us and prints a report that claims the same seal.
        var text = File.ReadAllText(signed.File);
        var (visit, hash) = Seal(File.ReadAllBytes(signed.Pdf));
        using var other = new SignedVisit("nest-in-the-cap");
        var bytes = File.ReadAllBytes(other.Pdf);
        var (otherVisit, otherHash) = Seal(bytes);
        Replace(bytes, otherVisit, visit);
        Replace(bytes, otherHash, hash);
        var run = Run.Of("verify", signed.Beside("forged.pdf", bytes), signed.File);
        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.StartsWith("Not as it stands", run.Out, StringComparison.Ordinal);
        Assert.Contains("differ from what this program prints", run.Out, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(signed.File));
    }

    [Fact]
    public void A_report_that_carries_another_seal_does_not_hold()
    {
        using var signed = new SignedVisit();
        var bytes = File.ReadAllBytes(signed.Pdf);
        var (_, hash) = Seal(bytes);
        Replace(bytes, hash, (hash[0] == '0' ? "1" : "0") + hash[1..]);
        var run = Run.Of("verify", signed.Beside("altered.pdf", bytes), signed.File);
        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.Contains("another seal", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"-57 Pa\"", "\"-58 Pa\"")]
    [InlineData("Ottilie Brandreth", "Ottilie Brandbeth")]
    public void A_visit_file_with_a_changed_entry_does_not_hold(string was, string now)
    {
        using var signed = new SignedVisit();
        var text = File.ReadAllText(signed.File);
        Assert.Contains(was, text, StringComparison.Ordinal);
        var run = Run.Of("verify", signed.Pdf, signed.Beside("altered.jsonl", Encoding.UTF8.GetBytes(text.Replace(was, now, StringComparison.Ordinal))));
        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.StartsWith("No: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("was changed", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_visit_file_with_a_line_taken_out_does_not_hold()
    {
        using var signed = new SignedVisit();
        var lines = File.ReadAllLines(signed.File).Where(l => !l.Contains("\"kind\":\"proof\"", StringComparison.Ordinal));
        var run = Run.Of("verify", signed.Pdf, signed.Beside("shorter.jsonl", Encoding.UTF8.GetBytes(string.Join('\n', lines))));
        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.Contains("missing", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_of_another_visit_does_not_hold()
    {
        using var signed = new SignedVisit();
        using var other = new SignedVisit("nest-in-the-cap");
        var run = Run.Of("verify", signed.Pdf, other.File);
        Assert.Equal(ExitCodes.Findings, run.Code);
        Assert.Contains("another visit", run.Out, StringComparison.Ordinal);
        Assert.Contains("not signed", Run.Of("verify", signed.Pdf, Run.Demo("healthy-service")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_report_or_is_not_there_is_bad_input()
    {
        using var signed = new SignedVisit();
        var turned = Run.Of("verify", signed.File, signed.Pdf);
        Assert.Equal(ExitCodes.BadInput, turned.Code);
        Assert.Contains("Give the report first", turned.Error, StringComparison.Ordinal);
        var missing = Run.Of("verify", signed.Pdf, "no-such.jsonl");
        Assert.Equal(ExitCodes.BadInput, missing.Code);
        Assert.Contains("no-such.jsonl", missing.Error, StringComparison.Ordinal);
    }

    // The visit and hash as the file's own data carry them.
    private static (string Visit, string Hash) Seal(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        return (Value("/EmberwrightVisit("), Value("/EmberwrightSeal("));

        string Value(string key) => text[(text.IndexOf(key, StringComparison.Ordinal) + key.Length)..] is var rest ? rest[..rest.IndexOf(')')] : "";
    }

    private static void Replace(byte[] bytes, string was, string now)
    {
        Assert.Equal(was.Length, now.Length);
        var at = bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(was));
        Assert.True(at >= 0);
        Encoding.ASCII.GetBytes(now).CopyTo(bytes, at);
    }
}
