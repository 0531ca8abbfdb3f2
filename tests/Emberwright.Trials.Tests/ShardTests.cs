using Emberwright.Trials.Calibration;
using Xunit;

namespace Emberwright.Trials.Tests;

/// <summary>A trial that was stopped goes on where it stood, and shards share the work.</summary>
public sealed class ShardTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trials").FullName;

    [Fact]
    public void What_is_done_is_not_done_again_and_a_line_cut_short_is_done_anew()
    {
        var shard = Of(1, 1);
        var made = new List<int>();
        Func<CalibrationRow>[] work = [.. Enumerable.Range(0, 5).Select<int, Func<CalibrationRow>>(k => () => { made.Add(k); return Row(k); })];
        shard.Run(_ => false, work[..3], _ => { });
        File.AppendAllText(Directory.GetFiles(_folder).Single(), "{\"pattern\":\"p\",\"se");
        var done = Read().Select(r => r.Index).ToHashSet();
        Assert.Equal([0, 1, 2], done.Order());
        made.Clear();
        shard.Run(done.Contains, work, _ => { });
        Assert.Equal([3, 4], made);
        Assert.Equal([0, 1, 2, 3, 4], Read().Select(r => r.Index));
    }

    [Fact]
    public void Two_shards_do_all_of_it_once()
    {
        Func<CalibrationRow>[] work = [.. Enumerable.Range(0, 7).Select<int, Func<CalibrationRow>>(k => () => Row(k))];
        Of(1, 2).Run(_ => false, work, _ => { });
        Of(2, 2).Run(_ => false, work, _ => { });
        Assert.Equal(Enumerable.Range(0, 7), Read().Select(r => r.Index).Order());
    }

    [Fact]
    public void One_stove_that_fails_does_not_end_the_run()
    {
        var failed = Of(1, 1).Run(_ => false, [() => throw new InvalidOperationException("no"), () => Row(1)], _ => { });
        Assert.Equal(1, failed);
        Assert.Equal([1], Read().Select(r => r.Index));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private Shard<CalibrationRow> Of(int part, int of) => new(_folder, "rows", part, of, TrialJson.Default.CalibrationRow);

    private IReadOnlyList<CalibrationRow> Read() => Shard<CalibrationRow>.ReadAll(_folder, "rows", TrialJson.Default.CalibrationRow);

    private static CalibrationRow Row(int index) => new("p", 1, index, 1, ["x"], []);
}
