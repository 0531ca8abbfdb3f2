using System.Text.Json;
using Xunit;

namespace Emberwright.Cli.Tests;

public sealed class CallCommandTests
{
    private static string Call(string words) =>
        $$$"""
        {"format": "emberwright-visit", "version": 1, "visit": "call-test"}
        {"at": "2026-01-14T09:00:00-05:00", "author": "R. Sorrel", "kind": "appliance", "body": {"pattern": "damper-insert"}}
        {"kind": "complaint", "body": {"words": "{{{words}}}"}}

        """;

    [Fact]
    public void The_emergency_question_stands_before_every_other()
    {
        var run = Run.OfInput(Call("Pellets fall but it does not light."), "call", "-");

        var first = run.Out.IndexOf("does a CO alarm sound", StringComparison.Ordinal);
        Assert.InRange(first, 0, run.Out.IndexOf("Then ask", StringComparison.Ordinal));
        Assert.Contains("Replace the igniter: needed", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("The CO alarm is sounding.")]
    [InlineData("Smoke from the hopper!")]
    [InlineData("The pipe glows and it roars like an engine.")]
    public void An_emergency_in_the_caller_s_own_words_ends_the_questions(string words)
    {
        var run = Run.OfInput(Call(words), "call", "-", "--json");

        Assert.True(run.Json.GetProperty("emergency").GetProperty("stands").GetBoolean());
        Assert.Equal(0, run.Json.GetProperty("questions").GetArrayLength());
        Assert.Equal(0, run.Json.GetProperty("parts").GetArrayLength());
    }

    [Fact]
    public void By_telephone_the_answers_are_written_and_the_end_says_what_to_bring()
    {
        var path = Path.Combine(Path.GetTempPath(), $"emberwright-{Guid.NewGuid():N}.jsonl");
        try
        {
            File.WriteAllText(path, Call("Pellets fall but it does not light."));
            var run = Run.OfInput("1\nasked does it burn on lit by hand: yes, it burns on\nend\n", "attend", path, "--phone");

            var bodies = File.ReadAllLines(path).Skip(3).Select(l => JsonDocument.Parse(l).RootElement.GetProperty("body")).ToList();
            Assert.Equal(("emergency", "none"), (bodies[0].GetProperty("question").GetString(), bodies[0].GetProperty("outcome").GetString()));
            Assert.Equal(2, bodies.Count);
            Assert.Contains("Bring, likeliest needed first", run.Out, StringComparison.Ordinal);
            Assert.DoesNotContain("Sign-off", run.Out, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
