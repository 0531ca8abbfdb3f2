using System.Text;
using Xunit;

namespace Emberwright.Cli.Tests;

/// <summary>A folder of visits printed at once, with the bar that shows how far it is.</summary>
public sealed class BatchReportTests : IDisposable
{
    private static readonly string[] Visits = ["healthy-service", "nest-in-the-cap", "worn-door-rope"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("emberwright-batch");

    public BatchReportTests()
    {
        Directory.CreateDirectory(In);
        foreach (var name in Visits) File.Copy(Run.Demo(name), Path.Combine(In, name + ".jsonl"));
    }

    private string In => Path.Combine(_folder.FullName, "in");

    private string Out => Path.Combine(_folder.FullName, "out");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Each_visit_becomes_the_report_it_becomes_alone()
    {
        var run = Run.Of("report", "--batch", In, "-o", Out);
        Assert.Equal((ExitCodes.Ok, ""), (run.Code, run.Error));
        Assert.Contains("3 of 3 written", run.Out, StringComparison.Ordinal);
        Assert.Equal(Visits.Select(v => v + ".pdf").Order(), Directory.GetFiles(Out).Select(Path.GetFileName).Order());
        var alone = Path.Combine(_folder.FullName, "alone.pdf");
        Run.Of("report", Run.Demo(Visits[1]), "-o", alone);
        Assert.Equal(File.ReadAllBytes(alone), File.ReadAllBytes(Path.Combine(Out, Visits[1] + ".pdf")));
    }

    [Fact]
    public void The_bar_fills_from_nothing_to_all_on_one_line_and_names_the_visit()
    {
        var steps = Run.Watched("report", "--batch", In, "-o", Out, "--paper", "tag").Error.Split('\r', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Visits.Length + 1, steps.Length);
        Assert.Equal([0, 8, 16, 24], steps.Select(s => s.Count(c => c == '█')));
        Assert.All(steps, s => Assert.Equal(24, s.Count(c => c is '█' or '·')));
        foreach (var (visit, i) in Visits.Order(StringComparer.Ordinal).Select((v, i) => (v, i))) Assert.Contains($"{i} of 3 {visit}.jsonl", steps[i], StringComparison.Ordinal);
        Assert.All(steps.SkipLast(1), s => Assert.DoesNotContain('\n', s));
        Assert.EndsWith("\n", steps[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void One_file_that_cannot_be_printed_does_not_stop_the_others()
    {
        File.WriteAllText(Path.Combine(In, "broken.jsonl"), "{\"format\":\"emberwright-visit\",\"version\":1,\"visit\":\"x\"}\n", Encoding.UTF8);
        var run = Run.Of("report", "--batch", In, "-o", Out);
        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains("3 of 4 written, 1 not", run.Out, StringComparison.Ordinal);
        Assert.Contains("broken.jsonl", run.Error, StringComparison.Ordinal);
        Assert.Equal(3, Directory.GetFiles(Out).Length);
    }

    [Fact]
    public void A_paper_that_a_visit_has_no_reason_for_is_said_of_that_visit()
    {
        var run = Run.Of("report", "--batch", In, "-o", Out, "--paper", "notice");
        Assert.Contains("No stop-use notice stands", run.Error, StringComparison.Ordinal);
        Assert.Contains("0 of 3 written, 3 not", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("card", ".pdf")]
    [InlineData("csv", ".csv")]
    public void Every_paper_can_be_made_of_a_whole_folder(string paper, string ending)
    {
        Assert.Equal(ExitCodes.Ok, Run.Of("report", "--batch", In, "-o", Out, "--paper", paper).Code);
        Assert.Equal(3, Directory.GetFiles(Out, "*" + ending).Length);
    }

    [Fact]
    public void A_folder_that_is_not_there_and_an_empty_one()
    {
        var missing = Run.Of("report", "--batch", Path.Combine(In, "none"), "-o", Out);
        Assert.Equal(ExitCodes.BadInput, missing.Code);
        Assert.Contains("no such folder", missing.Error, StringComparison.Ordinal);
        var empty = Directory.CreateDirectory(Path.Combine(_folder.FullName, "empty")).FullName;
        Assert.Contains("0 of 0 written", Run.Watched("report", "--batch", empty, "-o", Out).Out, StringComparison.Ordinal);
    }
}
