using CsCheck;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Journal;

public class MergeTests
{
    [Fact]
    public void Merging_is_commutative_associative_and_idempotent() =>
        SomeEntries.Story.Sample(story =>
        {
            var (a, b, c) = (SomeEntries.Play(story)) switch { var j => (j[0], j[1], j[2]) };
            return a.Merge(b).Equals(b.Merge(a))
                && a.Merge(b).Merge(c).Equals(a.Merge(b.Merge(c)))
                && a.Merge(a).Equals(a);
        });

    [Fact]
    public void Replicas_that_have_seen_the_same_entries_are_equal_however_these_arrived() =>
        Gen.Select(SomeEntries.Story, Gen.Int[0, 1000]).Sample((story, seed) =>
        {
            var journals = SomeEntries.Play(story);
            var whole = journals.Aggregate((x, y) => x.Merge(y));
            var deliveries = journals.SelectMany(j => j.Entries).ToArray();
            new Random(seed).Shuffle(deliveries);
            var replica = deliveries.Aggregate(VisitJournal.Begin("visit-1"), (journal, entry) => journal.Append(entry));
            return replica.Equals(whole) && VisitFile.Write(replica) == VisitFile.Write(whole);
        });

    [Fact]
    public void An_entry_written_after_another_was_seen_sorts_after_it_whatever_the_clocks_say() =>
        SomeEntries.Story.Sample(story =>
        {
            var journals = Enumerable.Range(0, 3).Select(_ => VisitJournal.Begin("visit-1")).ToArray();
            for (var step = 0; step < story.Length; step++)
            {
                var (device, seen, body, error) = story[step];
                if (seen < 3) journals[device] = journals[device].Merge(journals[seen]);
                var written = SomeEntries.Device(device, SomeEntries.Start.AddMinutes(error), step).Make(journals[device], body);
                if (journals[device].Entries.Any(e => e > written)) return false;
                journals[device] = journals[device].Append(written);
            }

            return true;
        });

    [Fact]
    public void A_written_journal_reads_back_equal_and_without_a_problem() =>
        SomeEntries.Story.Sample(story =>
        {
            var whole = SomeEntries.Play(story).Aggregate((x, y) => x.Merge(y));
            var back = VisitFile.Read(VisitFile.Write(whole));
            return back.Problems.Count == 0 && back.Journal.Equals(whole)
                && back.Journal.Entries.Select(e => e.Body).SequenceEqual(whole.Entries.Select(e => e.Body));
        });

    [Fact]
    public void Files_written_by_hand_merge_the_same_way_in_either_order()
    {
        const string Common = """{"at":"2026-01-14T09:30:00Z","kind":"note","body":{"words":"both have this"}}""";
        static VisitJournal Hand(params string[] lines) => VisitFile.Read(string.Join('\n', [VisitHeader.For("v").Line, .. lines])).Journal;
        var one = Hand("""{"at":"2026-01-14T09:00:00Z","kind":"note","body":{"words":"first"}}""", Common);
        var two = Hand(Common, """{"at":"2026-01-14T09:40:00Z","kind":"note","body":{"words":"last"}}""");
        Assert.Equal(one.Merge(two), two.Merge(one));
        Assert.Equal(["first", "both have this", "last"], one.Merge(two).Entries.Select(e => ((NoteBody)e.Body).Words));
        Assert.Equal(one.Merge(two), one.Merge(two).Merge(one));
    }

    [Fact]
    public void Journals_of_two_visits_do_not_merge()
    {
        var error = Assert.Throws<ArgumentException>(() => VisitJournal.Begin("one").Merge(VisitJournal.Begin("two")));
        Assert.Contains("one and two", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_restored_under_its_old_name_is_noticed_and_nothing_is_lost()
    {
        var before = SomeEntries.Device(1, SomeEntries.Start, 1).Append(VisitJournal.Begin("visit-1"), new NoteBody("lost phone"));
        var restored = SomeEntries.Device(1, SomeEntries.Start.AddHours(1), 2).Append(VisitJournal.Begin("visit-1"), new NoteBody("new phone"));
        var both = before.Merge(restored);
        Assert.Equal(2, both.Entries.Count);
        Assert.Equal(2, Assert.Single(both.Clashes()).Count);
    }
}
