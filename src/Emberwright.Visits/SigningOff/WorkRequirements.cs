using Emberwright.Stove;
using Emberwright.Visits.Journal;
using static Emberwright.Visits.SigningOff.Finding;

namespace Emberwright.Visits.SigningOff;

/// <summary>What concerns making safe, the areas and their photos.</summary>
internal static class WorkRequirements
{
    private static readonly Area[] ServiceAreas = [Area.CombustionBlower, Area.RoomAirBlower, Area.AshPassages, Area.Vent];

    public static Requirement MadeSafe { get; } = new("made-safe", Section.MakeSafe, facts => Steps(facts, SafeStep.SwitchedOff, SafeStep.Cool, SafeStep.Unplugged));

    public static Requirement Isolated { get; } = new("isolated", Section.MakeSafe, facts => Steps(facts, SafeStep.SwitchedOff, SafeStep.Unplugged));

    public static Requirement FourAreas { get; } = new("four-areas", Section.Areas, facts => ServiceAreas.SelectMany(area => Covered(facts, area)));

    public static Requirement AreaPhotos { get; } = new("area-photos", Section.Areas, facts =>
        ServiceAreas.Where(area => facts.Has<ActionBody>(a => a.Done && a.Area == area)).SelectMany(area => Pair(facts, area)));

    public static Requirement WarrantyPart { get; } = new("warranty-part", Section.Areas, facts => Unless(
        facts.Has<PartBody>(p => p.Number is not null && p.Tag is not null), "Record the part with its number and the maker's return tag."));

    public static Requirement VentCapped { get; } = new("vent-capped", Section.Areas, facts => Unless(
        facts.Has<ActionBody>(a => a.Done && a.Area == Area.Vent), "Cap or remove the vent and record it."));

    public static Requirement FuelRemoved { get; } = new("fuel-removed", Section.Areas, facts => Unless(
        facts.Has<ActionBody>(a => a.Done && a.Area == Area.Feed), "Empty hopper and feed tube and record it."));

    /// <summary>Work not done on an appliance that is closed out of service: printed, never demanded.</summary>
    public static Requirement LeftUndone { get; } = new("left-undone", Section.Areas, facts =>
        ServiceAreas.Where(area => !facts.Has<ActionBody>(a => a.Done && a.Area == area)).Select(area => Limits($"{Name(area)}: not cleaned; the appliance is out of service.")));

    internal static string Name(Area area) => area switch
    {
        Area.CombustionBlower => "Combustion blower",
        Area.RoomAirBlower => "Room-air blower",
        Area.AshPassages => "Ash passages",
        Area.Vent => "Vent",
        Area.BurnPot => "Burn pot",
        Area.Seals => "Seals",
        Area.Feed => "Feed",
        Area.Ignition => "Ignition",
        Area.Interlocks => "Interlocks",
        Area.Electrical => "Electrical",
        Area.Water => "Water",
        Area.Site => "Site",
    };

    private static IEnumerable<Finding> Steps(SignOffFacts facts, params SafeStep[] steps) =>
        steps.Where(step => !facts.Has<SafeBody>(s => s.Step == step)).Select(step => Lacks($"Record that the appliance was {EnumWords.Of(step).Replace('-', ' ')}."));

    private static IEnumerable<Finding> Covered(SignOffFacts facts, Area area)
    {
        var work = facts.Visit.Of<ActionBody>().Where(a => a.Body.Area == area).Select(a => a.Body).ToArray();
        if (work.Any(a => a.Done)) return [];
        return work.LastOrDefault()?.Reason switch
        {
            NotDoneReason.NoAccess => [Limits($"{Name(area)}: not done, it could not be reached safely.")],
            NotDoneReason.OwnerRefused when facts.RefusedInWriting(area) => [Limits($"{Name(area)}: not done, the owner refused it in writing.")],
            NotDoneReason.OwnerRefused => [Lacks($"{Name(area)}: record the owner's written refusal.")],
            NotDoneReason.NotFitted => [],
            NotDoneReason.OutOfService => [Lacks($"{Name(area)}: not done because out of service, but no stop-use notice stands. Issue one, or clean it.")],
            null => [Lacks($"{Name(area)}: clean it, or record why not: no access, refused by the owner, not fitted. Another firm's work is no reason.")],
        };
    }

    private static IEnumerable<Finding> Pair(SignOffFacts facts, Area area)
    {
        foreach (var moment in Enum.GetValues<Moment>())
            if (!facts.Has<PhotoBody>(p => p.Area == area && p.Moment == moment))
                yield return Lacks($"{Name(area)}: photo {EnumWords.Of(moment)} work.");
    }
}
