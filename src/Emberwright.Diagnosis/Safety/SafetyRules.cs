using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Safety;

/// <summary>
/// All safety stops. Thresholds for carbon monoxide lean on the published limits named beside them; everything else is
/// common practice. The appliance's listing, its manual and local code take precedence.
/// </summary>
public static class SafetyRules
{
    private const string Practice = "common practice, no source";
    private const string Technician = "the technician who put it right and proved it";
    private const string Owner = "the owner's signed word that it is taken out of use, or whoever replaces it";
    private static readonly IReadOnlyList<string> Inside = [Places.Room, Places.WarmAir];

    /// <summary>The rules, most urgent first.</summary>
    public static IReadOnlyList<SafetyRule> All { get; } =
    [
        new("co-evacuate", Urgency.Evacuate,
            "Everybody out now; leave doors open behind you, call the emergency number, keep the hopper lid shut and do not pull the plug first.",
            [new Reaches(Measure.CarbonMonoxide, Inside, 70), new Seen("ill", "yes"), new Seen(EmergencySign.Id, EmergencySign.Unwell)],
            [new ProvedClear(CoRise)],
            "the fire service or a physician for the people; the technician for the stove, after carbon monoxide in the room is nought on high for 30 minutes and again during shutdown, and everybody is well",
            "70 ppm: the level residential CO alarms must sound at within 60 to 240 minutes (UL 2034, from memory); evacuating at once is common practice"),
        new("co-alarm", Urgency.Evacuate,
            "Treat the alarm as real: everybody into fresh air, stove off but not unplugged, measure carbon monoxide before anything else.",
            [new Seen(Complaints.Sign, Complaints.CoAlarm), new Seen(EmergencySign.Id, EmergencySign.Alarm)],
            [new ProvedClear(CoRise)],
            "the technician, after measuring on high for 30 minutes and again during shutdown, extract fans on",
            "EN 50291: an alarm sounds at 50 ppm only after 60 to 90 minutes (from memory); never dismissing it is common practice"),
        new("hopper-smoke", Urgency.Evacuate,
            "Lid shut, everybody out of the room, emergency number if it does not stop at once; do not pull the plug first.",
            [new Seen(Complaints.Sign, Complaints.HopperSmoke), new Seen(EmergencySign.Id, EmergencySign.HopperSmoke)],
            [new SeenAgain("feed-tube-look", "clean", Complaints.Sign, EmergencySign.Id)],
            "the technician, after the feed tube is found clean and why it smoked is put right",
            Practice),
        new("vent-burning", Urgency.Evacuate,
            "The vent may be burning: everybody out, call the emergency number, keep the hopper lid and all doors of the stove shut, do not pull the plug first.",
            [new Seen(EmergencySign.Id, EmergencySign.VentGlows)],
            [],
            "the fire service for the house; a certified chimney sweep or the authority having jurisdiction for the vent",
            Practice),
        new("co-ventilate", Urgency.StopNow,
            "Stop the stove, open windows, leave the room until the reading falls.",
            [new Reaches(Measure.CarbonMonoxide, Inside, 35)],
            [new ReadAgain(CoRise)],
            "the technician, after the leak is found, closed and proved on high for 30 minutes",
            "35 ppm: US national ambient air quality standard, mean over 1 hour"),
        new("co-rise", Urgency.StopNow,
            "Stop the stove: exhaust gets into the room. Find and close the leak before it burns again.",
            [new Reaches(Measure.CarbonMonoxide, Inside, CoRise, FireOnly: true)],
            [new ReadAgain(CoRise)],
            "the technician, after the leak is found, closed and proved on high for 30 minutes",
            "any rise over outdoor air while burning is exhaust: common practice; the instrument's own noise is about 2 ppm"),
        new("burn-back", Urgency.StopNow,
            "Do not use: fire has been in the feed tube. Empty hopper and auger, find out why, renew what is scorched.",
            [new Seen("feed-tube-look", "scorched")],
            [new SeenAgain("feed-tube-look", "clean")],
            Technician,
            Practice),
        new("feed-will-not-stop", Urgency.StopNow,
            "Do not use: the feed does not stop when it should. Switch off, let it burn out, unplug.",
            [new Seen(Complaints.Sign, Complaints.WillNotStop), new Seen("feed-pulse", "always"), new Seen("hose-off-test", "feeds-on")],
            [new SeenAgain("hose-off-test", "stops", Complaints.Sign, "feed-pulse")],
            Technician,
            Practice),
        new("reversed-draft", Urgency.StopNow,
            "Do not use: the vent draws backwards.",
            [new Seen("pencil-intake", "out")],
            [new SeenAgain("pencil-intake", "in")],
            Technician,
            Practice),
        new("spillage", Urgency.DoNotUse,
            "Do not use with the hood or fans on: exhaust spills into the room.",
            [new Seen("hood-on", "worse"), new Seen(HousePressure, "deep")],
            [new SeenAgain("hood-on", "no-change", HousePressure), new SeenAgain(HousePressure, "within", "hood-on")],
            "the technician, after an outside-air supply or an interlock with the fan, proved with all fans on",
            "house more than 4 Pa below outdoors for a stove that draws room air, more than 8 Pa for a room-sealed one: common limits, no source at hand"),
        new("cracked-exchanger", Urgency.DoNotUse,
            "Do not use: the exchanger or firebox is cracked; carbon monoxide reaches the warm air after shutdown.",
            [new Seen("exchanger-crack", "crack")],
            [],
            Owner,
            Practice),
        new("safety-device-bridged", Urgency.DoNotUse,
            "Do not use: a safety device is bridged or welded shut. Take the bridge off and find out why it was put there.",
            [new Seen("bridge-wire", "found"), new Seen("switch-pump", "never-opens"), new Seen("disc-bench", "stuck")],
            [new SeenAgain("bridge-wire", "none"), new SeenAgain("switch-pump", "right"), new SeenAgain("disc-bench", "right")],
            "the technician who removed the bridge and saw the device work",
            Practice),
        new("wrong-fuse", Urgency.DoNotUse,
            "Do not use: the fuse is not the rated one. Fit the rated fuse and find what blew it.",
            [new Seen("fuse", "wrong")],
            [new SeenAgain("fuse", "whole")],
            Technician,
            Practice),
        new("scorched-wiring", Urgency.DoNotUse,
            "Do not use: wiring or a connector is scorched. Unplug; renew it and find the cause.",
            [new Seen("connectors", "scorched"), new Seen("board-look", "scorched"), new Seen("lead", "thin-or-warm"), new Seen("smell", "hot-electrical")],
            [new SeenAgain("connectors", "tight", "smell"), new SeenAgain("board-look", "sound"), new SeenAgain("lead", "sound")],
            "the technician, or a licensed electrician for the house wiring",
            Practice),
        new("cleanout-cap-off", Urgency.DoNotUse,
            "Do not use: the clean-out cap is off or unsealed; exhaust escapes there under pressure.",
            [new Seen("tee-cap", "off")],
            [new SeenAgain("tee-cap", "sealed")],
            Technician,
            Practice),
        new("pressure-side-leak", Urgency.DoNotUse,
            "Do not use: exhaust leaks from the pressure side into the room. Seal the joint and prove it with smoke.",
            [new Seen("pencil-flange", "blown"), new Seen("pencil-joints", "blown")],
            [new SeenAgain("pencil-flange", "still"), new SeenAgain("pencil-joints", "still")],
            "the technician, after a smoke test of every joint opened and carbon monoxide measured on high",
            Practice),
        new("broken-glass-or-latch", Urgency.DoNotUse,
            "Do not use: glass or latch does not hold the fire in.",
            [new Seen("glass-whole", "cracked"), new Seen("latch", "loose")],
            [new SeenAgain("glass-whole", "whole"), new SeenAgain("latch", "holds")],
            Technician,
            Practice),
        new("ignition-thump", Urgency.DoNotUse,
            "Do not use: it lights with a thump. Empty the pot, find why fuel gathers before it lights.",
            [new Seen("noise", "thump")],
            [new SeenAgain("noise", "none")],
            Technician,
            Practice),
        new("vent-fire", Urgency.StopNow,
            "Stop and do not use: the vent has burned or glowed. Have it swept and its whole length inspected.",
            [new Reaches(Measure.Temperature, [Places.Collar, Places.Flue, Places.VentOutlet], 540)],
            [],
            "a certified chimney sweep or the authority having jurisdiction",
            "540 °C (1000 °F): continuous flue-gas limit of listed factory-built chimneys (UL 103, from memory); no pellet fire reaches it"),
        new("repeated-over-temperature", Urgency.DoNotUse,
            "Do not use: the limit opens again after it has been reset. Find out why it gets hot; never bridge it.",
            [new Seen("disc-click", "clicks-again")],
            [new SeenAgain("disc-click", "silent")],
            Technician,
            Practice),
        new("water-jacket-leak", Urgency.DoNotUse,
            "Do not use: the water jacket leaks into the firebox. Isolate, let it cool, relieve the pressure.",
            [new Seen("water-leak", "firebox"), new Seen("hold-pressure", "falls")],
            [],
            Owner,
            Practice),
        new("vent-hot-near-combustibles", Urgency.DoNotUse,
            "Do not use: something that burns gets hot beside the vent. Restore the listed clearance.",
            [new Reaches(Measure.Temperature, [CombustiblesPlace], 77)],
            [new ReadAgain(77)],
            "the technician, or the authority having jurisdiction where a permit was needed",
            "room temperature + 50 K is a usual limit for surfaces of combustibles near listed appliances (from memory)"),
    ];

    /// <summary>Place of a temperature taken on combustible material beside the vent.</summary>
    public const string CombustiblesPlace = "combustibles";

    private const string HousePressure = "house-pressure";

    /// <summary>CO in the room that counts as a rise, ppm.</summary>
    public const double CoRise = 5;

    /// <summary>A rule by its id, or null.</summary>
    /// <param name="id">Rule id.</param>
    public static SafetyRule? Find(string id) => All.FirstOrDefault(r => r.Id == id);
}
