using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Visits.Journal;
using Emberwright.Visits.SigningOff;
using Xunit;

namespace Emberwright.Visits.Tests.SigningOff;

/// <summary>
/// More ways of closing a visit, each with what a careful technician would say of it and why (common practice, no source).
/// All begin from a service in which everything is in order, and change one thing.
/// </summary>
public class MoreClosingsTests
{
    private const string VentDone = """{"kind": "action", "body": {"action": "clean-vent", "area": "vent"}}""";
    private const string RoomAirDone = """{"kind": "action", "body": {"action": "clean-room-air-blower", "area": "room-air-blower"}}""";
    private const string Signed = """{"kind": "signature", "body": {"role": "customer", "name": "O. Brandreth"}}""";
    private const string RoomCo = "\"value\": \"0 ppm\"";
    private const string FireboxLeft = "\"value\": \"-0.12 inWC\"";

    public static TheoryData<string, VisitKind, string[], string[], Decision, string, string> Situations() => new()
    {
        // name, kind, pairs of old and new text, stops, decision, ids missing, why
        { "three ppm on high", VisitKind.Service, [RoomCo, "\"value\": \"3 ppm\""], [], Decision.Refused, "test-fire shutdown-co", "Any rise of CO while it burns is exhaust in the room." },
        { "CO read after twenty minutes", VisitKind.Service, ["\"after\": \"40 min\"", "\"after\": \"20 min\""], [], Decision.Refused, "test-fire", "Joints open and leak as they warm; half an hour is the least." },
        { "CO meter zeroed indoors", VisitKind.Service, [", \"zeroedOutdoors\": true", ""], [], Decision.Refused, "test-fire", "Zeroed in the exhaust, it reads nothing." },
        { "smell complained of, shutdown not measured", VisitKind.Service, [VentDone, """{"kind": "complaint", "body": {"words": "It smells", "outcome": "smoke-smell"}}""" + "\n" + VentDone], [], Decision.Refused, "shutdown-co", "A cracked exchanger shows after the blower has slowed." },
        { "no room-air blower on this stove", VisitKind.Service, [RoomAirDone, RoomAirDone[..^2] + ", \"done\": false, \"reason\": \"not-fitted\"}}"], [], Decision.Permitted, "", "What is not there needs neither cleaning nor an excuse." },
        { "ice on the roof", VisitKind.Service, [VentDone, VentDone[..^2] + ", \"done\": false, \"reason\": \"no-access\"}}"], [], Decision.PermittedWithLimitations, "", "Limited access closes, and the report says what was not reached." },
        { "owner refuses the vent by word of mouth", VisitKind.Service, [VentDone, VentDone[..^2] + ", \"done\": false, \"reason\": \"owner-refused\"}}"], [], Decision.Refused, "four-areas", "Only a refusal in writing protects the next user." },
        { "owner refuses the vent in writing", VisitKind.Service, [VentDone, VentDone[..^2] + ", \"done\": false, \"reason\": \"owner-refused\"}}\n" + """{"kind": "consent", "body": {"about": "sweeping the vent", "given": false, "inWriting": true, "area": "vent"}}"""], [], Decision.PermittedWithLimitations, "", "It is the owner's right, and it is printed." },
        { "blower out again after the smoke pencil", VisitKind.Service, [Signed, """{"kind": "action", "body": {"action": "reseat-blower-gasket", "area": "combustion-blower"}}""" + "\n" + Signed], [], Decision.Refused, "as-left test-fire proofs", "A joint opened after its proof is not proved, nor the air and the fire behind it." },
        { "smoke pencil said to be not fitted", VisitKind.Service, ["\"proof\": \"smoke-pencil\", \"outcome\": \"passed\"", "\"proof\": \"smoke-pencil\", \"outcome\": \"not-fitted\""], [], Decision.Refused, "proofs", "Every stove has joints; opened ones are proved." },
        { "no switch at the hopper lid", VisitKind.Service, ["\"proof\": \"lid-open\", \"outcome\": \"passed\"", "\"proof\": \"lid-open\", \"outcome\": \"not-fitted\""], [], Decision.Permitted, "", "Some models have none." },
        { "feed runs on with the lid open", VisitKind.Service, ["\"proof\": \"lid-open\", \"outcome\": \"passed\"", "\"proof\": \"lid-open\", \"outcome\": \"failed\""], [], Decision.Refused, "proofs", "A failed safety function is no paperwork." },
        { "gauge out of date since yesterday", VisitKind.Service, ["\"name\": \"gauge\", \"calibratedUntil\": \"2026-12-31\"", "\"name\": \"gauge\", \"calibratedUntil\": \"2026-02-09\""], [], Decision.Refused, "instruments", "A reading is worth its instrument." },
        { "lid switch bridged, all readings good", VisitKind.Service, [], ["Remove the bridge over the lid switch."], Decision.Refused, "stops", "No good reading outvotes a bridge." },
        { "lid switch bridged, notice signed", VisitKind.Service, [Signed, """{"kind": "notice", "body": {"reason": "lid switch bridged", "releasedBy": "this firm", "readTo": "the owner", "signed": true}}""" + "\n" + Signed], ["Remove the bridge over the lid switch."], Decision.OutOfService, "", "Contained and written: it closes without being made good today." },
        { "notice left on the stove, nobody home", VisitKind.Service, [Signed, """{"kind": "notice", "body": {"reason": "lid switch bridged", "releasedBy": "this firm"}}""" + "\n" + """{"kind": "signature", "body": {"role": "customer", "absent": true}}"""], [], Decision.OutOfService, "", "An absent owner does not keep a dangerous stove in use." },
        { "firebox a little weak, said to be the wind", VisitKind.Service, [FireboxLeft, "\"value\": \"-0.09 inWC\"", Signed, Explained("weather-today", "reading-uncertain") + "\n" + Signed], [], Decision.PermittedWithLimitations, "", "Three pascals are within what wind does; it is printed." },
        { "firebox half of what it should be, said to be the wind", VisitKind.Service, [FireboxLeft, "\"value\": \"-0.05 inWC\"", Signed, Explained("weather-today", "reading-uncertain") + "\n" + Signed], [], Decision.Refused, "in-band", "No breeze halves a blower's vacuum." },
        { "firebox half of what it should be, said to be the gauge", VisitKind.Service, [FireboxLeft, "\"value\": \"-0.05 inWC\"", Signed, Explained("instrument-limit", "reading-uncertain") + "\n" + Signed], [], Decision.Refused, "in-band", "A gauge that is five hundredths out is not in date." },
        { "wheel on order, no date", VisitKind.Breakdown, [FireboxLeft, "\"value\": \"-0.09 inWC\"", Signed, Complaint + "\n" + Explained("part-on-order", "margin-reduced") + "\n" + Signed], [], Decision.Refused, "in-band", "A part on order without a day to fit it is forgotten." },
        { "wheel on order, back on Thursday", VisitKind.Breakdown, [FireboxLeft, "\"value\": \"-0.09 inWC\"", Signed, Complaint + "\n" + Explained("part-on-order", "margin-reduced") + "\n" + """{"kind": "due", "body": {"on": "2026-02-19", "for": "return"}}""" + "\n" + Signed], [], Decision.PermittedWithLimitations, "", "Cause, consequence, and the day it ends." },
        { "warranty part without the maker's tag", VisitKind.Warranty, [Signed, Complaint + "\n" + Label + "\n" + """{"kind": "part", "body": {"part": "igniter", "number": "IG-4"}}""" + "\n" + Signed], [], Decision.Refused, "warranty-part", "The maker pays for a tag, not for a story." },
        { "warranty part with its tag", VisitKind.Warranty, [Signed, Complaint + "\n" + Label + "\n" + """{"kind": "part", "body": {"part": "igniter", "number": "IG-4", "tag": "R-118"}}""" + "\n" + Signed], [], Decision.Permitted, "", "Nothing else is owed." },
        { "taken out of use for good", VisitKind.Decommissioning, [Signed, """{"kind": "action", "body": {"action": "hopper and feed tube emptied", "area": "feed"}}""" + "\n" + Signed], [], Decision.Permitted, "", "Nobody fires a stove to take it away." },
    };

    private const string Complaint = """{"kind": "complaint", "body": {"words": "It stops", "outcome": "lights-then-stops"}}""";

    private static string Label => $$$"""{"kind": "photo", "body": {"blob": "{{{Blob.ReferenceTo([1])}}}", "caption": "label"}}""";

    private static string Explained(string cause, string consequence) =>
        $$$"""{"kind": "explanation", "body": {"place": "firebox", "cause": "{{{cause}}}", "consequence": "{{{consequence}}}"}}""";

    [Theory]
    [MemberData(nameof(Situations))]
    public void Closes_as_a_careful_technician_would(string name, VisitKind kind, string[] changes, string[] stops, Decision decision, string missing, string why)
    {
        var visit = Changed(changes);
        StandingStop[] standing = [.. stops.Select(words => new StandingStop("bridged-switch", words, visit.Facts[0].Id, "this firm", "common practice, no source"))];
        var review = SignOff.Review(visit, kind, FireboxBand(visit), standing);
        Assert.True(missing == string.Join(' ', review.Missing.Select(m => m.Id).Distinct()), $"{name}: {why} Missing: {string.Join(" | ", review.Missing.Select(m => m.Words))}");
        Assert.True(decision == review.Decision, $"{name}: {why} It says {review.Decision}: {string.Join(" | ", review.Limitations)}");
    }

    // The firebox's healthy band of this stove, fan only, −0.13 … −0.10 inWC.
    private static List<Comparison> FireboxBand(Visit visit) =>
    [
        .. visit.LeftWith.Where(r => r.Body is { Measure: Measure.Pressure, Place: Places.Firebox } && r.Body.Condition == Condition.FanOnly).Select(r =>
        {
            var band = new Band(r.Body.Observable, -32.4, -28.6, -24.8, 0.9, "card");
            return new Comparison(r.Id, r.Body.Si, band, r.Body.Si < band.Low ? Verdict.Low : r.Body.Si > band.High ? Verdict.High : Verdict.In, r.Epoch);
        }),
    ];

    private static Visit Changed(string[] changes)
    {
        var text = Repository.Text("tests", "Emberwright.Visits.Tests", "Fixtures", "closing", "all-in-order.jsonl");
        for (var i = 0; i < changes.Length; i += 2)
        {
            Assert.Contains(changes[i], text, StringComparison.Ordinal);
            text = text.Replace(changes[i], changes[i + 1], StringComparison.Ordinal);
        }

        var file = VisitFile.Read(text);
        Assert.Empty(file.Problems);
        return Visit.Fold(file.Journal);
    }
}
