using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Journal;

public class EntryFactoryTests
{
    [Fact]
    public void An_entry_carries_device_seq_author_time_and_clock()
    {
        var journal = SomeEntries.Device(1, SomeEntries.Start, 1).Append(VisitJournal.Begin("visit-1"), new NoteBody("one"));
        journal = SomeEntries.Device(1, SomeEntries.Start, 2).Append(journal, new NoteBody("two"));
        var entry = journal.Entries[1];
        Assert.Equal(("device-1", 2L, "author 1", SomeEntries.Start), (entry.Device, entry.Seq, entry.Author, entry.At));
        Assert.Equal(new HybridClock(SomeEntries.Start.ToUnixTimeMilliseconds(), 1), entry.Clock);
        Assert.Equal(7, Guid.Parse(entry.Id).Version);
        Assert.Contains("\"at\":\"2026-01-14T09:30:00-05:00\"", entry.Line, StringComparison.Ordinal);
    }

    public static TheoryData<EntryBody> EveryKind() =>
    [
        new ApplianceBody("damper-insert", "Parlour", "Fennick & Oar", "Hob 40", "1", "120 V", CardJson: """{"pattern":"damper-insert"}"""),
        new ApplianceBody("damper-insert", CardName: "hob-40"),
        new SiteBody(Q("250 m"), Q("-2 °C"), Q("20 °C"), Q("3 mph"), Q("-2 Pa"), Q("121 V"), true, "old house",
            new VentBody(Q("3 in"), Q("0.3 m"), Q("5.5 m"), 1, 2, 1, "vertical-cap", "flexible", true)),
        new CustomerBody("A", "B", "C"),
        new VisitBody(VisitKind.Commissioning, "firm", "technician", SomeEntries.Start, "job"),
        new ComplaintBody("no heat", "complaint", "little-heat"),
        new AnswerBody("onset", "gradual", "bit by bit"),
        new ObservationBody("glass", "black", Area.BurnPot, "words"),
        SomeEntries.Reading(-29) with { Instrument = "gauge", Phase = Phase.AsLeft, After = Q("35 min"), Note = "note" },
        new ReadingBody("igniter", true, Measure.Resistance, Condition.FanOnly, Q("open"), "OL"),
        new CodeBody("E3", "low-draught", 2),
        new CounterBody("hours", "4120"),
        new ParameterBody("P7", "3", "2"),
        new ActionBody("clean-vent", Area.Vent, false, NotDoneReason.NoAccess, "words"),
        new PartBody("gasket", "1187", "fitted", "T-1", Area.CombustionBlower, PartCondition.New, PartSource.Van),
        new LabourBody("clean-vent", Q("25 min"), Area.Vent),
        new PhotoBody(Blob.ReferenceTo([1, 2]), Area.Vent, Moment.After, "tee"),
        new NoteBody("words", Area.Feed),
        new ConsentBody("estimate", true, "180", "owner", true, Area.Vent, Blob.ReferenceTo([4])),
        new SafeBody(SafeStep.ProvedDead, "meter"),
        new ProofBody(Proof.HoseOff, ProofOutcome.Passed, Q("20 s"), "words"),
        new FireBody(FireMoment.High),
        new NoticeBody("crack", "firm", "owner", true, true),
        new InstrumentBody("gauge", new DateOnly(2026, 12, 31), true),
        new ExplanationBody("e", "collar", Cause.PartOnOrder, Consequence.UseLimited, "words"),
        new DueBody(new DateOnly(2027, 1, 14), DueFor.FollowUp, "basis"),
        new SignatureBody(Role.Supervisor, "name", Blob.ReferenceTo([3]), true),
        new ErasedBody([Blob.ReferenceTo([4])], "by letter"),
        new CorrectionBody("id", null, "typing slip"),
        new CorrectionBody("id", new NoteBody("right"), "typing slip"),
    ];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void Every_kind_reads_back_as_it_was_written(EntryBody body)
    {
        var journal = SomeEntries.Device(1, SomeEntries.Start, 1).Append(VisitJournal.Begin("visit-1"), body);
        var back = VisitFile.Read(VisitFile.Write(journal));
        Assert.Empty(back.Problems);
        Assert.Equal(body, Assert.Single(back.Journal.Entries).Body);
    }

    [Fact]
    public void No_kind_is_left_out_above()
    {
        // Kinds whose bodies hold lists are compared member by member in the tests below.
        string[] withLists = ["history", "handover", "seal"];
        Assert.Equal(EntryKinds.Names.Order(), EveryKind().Select(row => row.Data.Kind).Concat(withLists).Distinct().Order());
    }

    [Fact]
    public void History_and_handover_read_back_with_their_lists()
    {
        var history = new HistoryBody(14, Q("1.3 t"), 70, Q("40 lb"), new DateOnly(2024, 11, 2), 26, "softwood", [SomeEntries.Reading(-27), SomeEntries.Reading(-28)]);
        var handover = new HandoverBody(["weekly care", "lid"], "lot 7", new DateOnly(2031, 6, 30));
        var journal = SomeEntries.Device(1, SomeEntries.Start, 1).Append(VisitJournal.Begin("visit-1"), history);
        journal = SomeEntries.Device(1, SomeEntries.Start, 2).Append(journal, handover);
        var back = VisitFile.Read(VisitFile.Write(journal)).Journal;

        var readHistory = Assert.IsType<HistoryBody>(back.Entries[0].Body);
        Assert.Equal(history.LastAsLeft!, readHistory.LastAsLeft!);
        Assert.Equal(history, readHistory with { LastAsLeft = history.LastAsLeft });
        var readHandover = Assert.IsType<HandoverBody>(back.Entries[1].Body);
        Assert.Equal(handover.Shown, readHandover.Shown);
        Assert.Equal(handover, readHandover with { Shown = handover.Shown });
    }

    private static Quantity Q(string text) =>
        Quantity.TryParse(text, out var quantity, out var problem) ? quantity : throw new ArgumentException(problem!.Message);
}
