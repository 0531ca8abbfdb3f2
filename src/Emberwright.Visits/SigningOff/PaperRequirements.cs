using Emberwright.Visits.Journal;
using static Emberwright.Visits.SigningOff.Finding;

namespace Emberwright.Visits.SigningOff;

/// <summary>What concerns identification, evidence, handover and signatures.</summary>
internal static class PaperRequirements
{
    public static Requirement Identified { get; } = new("identified", Section.Call, facts => Unless(
        facts.Visit.Appliance is { } a && (a.Serial ?? a.Label) is not null, "Record the serial number or what the rating label says."));

    public static Requirement LabelPhoto { get; } = new("label-photo", Section.Call, facts => Unless(
        facts.Has<PhotoBody>(p => string.Equals(p.Caption, "label", StringComparison.OrdinalIgnoreCase)), "Photograph the rating label."));

    public static Requirement Complaint { get; } = new("complaint", Section.Call, facts => Unless(
        facts.Has<ComplaintBody>(), "Record the complaint in the customer's words."));

    public static Requirement VentDescribed { get; } = new("vent-described", Section.Call, facts => Unless(
        facts.Visit.Site?.Vent is { Diameter: not null, Vertical: not null }, "Describe the vent: diameter, rise, fittings, terminal."));

    public static Requirement Clearances { get; } = new("clearances", Section.AsFound, facts => Seen(facts, "clearances", "Measure the clearances to combustibles and record them."));

    public static Requirement VentClass { get; } = new("vent-class", Section.AsFound, facts => Seen(facts, "vent-class", "Record the class of the vent and how it is joined."));

    public static Requirement Handover { get; } = new("handover", Section.SignOff, facts => Unless(
        facts.Has<HandoverBody>(h => h.Shown.Count > 0), "Show weekly care, lid and CO alarm, and record it."));

    public static Requirement NextDue { get; } = new("next-due", Section.SignOff, facts => Unless(facts.Has<DueBody>(), "Set when to come back."));

    public static Requirement CustomerSigned { get; } = new("customer", Section.SignOff, facts =>
        facts.Visit.Of<SignatureBody>().LastOrDefault(s => s.Body.Role == Role.Customer)?.Body switch
        {
            null => [Lacks("Let the customer sign, or record that nobody was there.")],
            { Absent: true } => [Limits("The customer was absent and has not signed.")],
            _ => [],
        });

    private static IEnumerable<Finding> Seen(SignOffFacts facts, string sign, string words) =>
        Unless(facts.Has<ObservationBody>(o => o.Sign == sign), words);
}
