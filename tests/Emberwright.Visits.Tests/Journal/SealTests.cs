using System.Security.Cryptography;
using System.Text;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Journal;

public class SealTests
{
    private static readonly Dictionary<string, string> Figures = new() { ["firebox healthy"] = "−29 … −25 Pa", ["ash passages"] = "8 % shut" };

    private static VisitJournal Sealed()
    {
        var journal = VisitJournal.Begin("visit-1");
        journal = SomeEntries.Device(1, SomeEntries.Start, 1).Append(journal, SomeEntries.Reading(-27));
        journal = SomeEntries.Device(2, SomeEntries.Start.AddMinutes(1), 2).Append(journal, new NoteBody("signed"));
        return SomeEntries.Device(1, SomeEntries.Start.AddMinutes(2), 3).Append(journal, Seal.Over(journal, "0.1.0", Figures));
    }

    [Fact]
    public void A_seal_holds_after_writing_and_reading()
    {
        var seal = Seal.Check(VisitFile.Read(VisitFile.Write(Sealed())).Journal);
        Assert.NotNull(seal);
        Assert.True(seal.Intact);
        Assert.Empty(seal.Addenda);
        Assert.Equal("0.1.0", seal.Body.Engine);
        Assert.Equal("8 % shut", seal.Body.Figures["ash passages"]);
        Assert.Equal(1, seal.Body.LastSeq["device-2"]);
    }

    [Fact]
    public void The_hash_is_what_the_documentation_says()
    {
        var journal = Sealed();
        var seal = Seal.Check(journal)!;
        var text = string.Concat(journal.Entries.Take(2).OrderBy(e => e.Id, StringComparer.Ordinal).Select(e =>
                $"{e.Id} {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(e.Line)))}\n"))
            + "device-1 1\ndevice-2 1\nengine 0.1.0\nash passages=8 % shut\nfirebox healthy=−29 … −25 Pa\n";
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))), seal.Body.Hash);
    }

    [Theory]
    [InlineData("−27 Pa", "−29 Pa")]
    [InlineData("8 % shut", "2 % shut")]
    public void A_changed_line_or_figure_breaks_it(string old, string now)
    {
        var text = VisitFile.Write(Sealed());
        Assert.Contains(old, text, StringComparison.Ordinal);
        Assert.False(Seal.Check(VisitFile.Read(text.Replace(old, now, StringComparison.Ordinal)).Journal)!.Intact);
    }

    [Fact]
    public void A_lost_line_breaks_it_and_is_named()
    {
        var journal = Sealed();
        var lost = journal.Entries[1];
        var seal = Seal.Check(VisitJournal.Of(journal.Header, journal.Entries.Where(e => e != lost)))!;
        Assert.False(seal.Intact);
        Assert.Equal([lost.Id], seal.Missing);
    }

    [Fact]
    public void What_arrives_later_is_an_addendum_even_from_a_slow_clock()
    {
        var late = SomeEntries.Device(3, SomeEntries.Start.AddHours(-2), 9).Make(VisitJournal.Begin("visit-1"), new NoteBody("from the other phone"));
        var seal = Seal.Check(Sealed().Append(late))!;
        Assert.True(seal.Intact);
        Assert.Equal([late.Id], seal.Addenda.Select(e => e.Id));
    }

    [Fact]
    public void An_open_visit_has_no_seal() => Assert.Null(Seal.Check(VisitJournal.Begin("visit-1")));
}
