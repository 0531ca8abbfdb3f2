using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Stove;

namespace Emberwright.Reports.Tests;

/// <summary>An invented visit of an invented firm, as the report prints it.</summary>
internal static class SampleReport
{
    public static DateTimeOffset At { get; } = new(2026, 11, 24, 11, 5, 0, TimeSpan.FromHours(-7));

    public static ReportInput Cleaned { get; } = new()
    {
        Firm = new("Tamarack & Vale Hearth Service", "Low Orrin, county of Orrin · 555 0142"),
        Customer = "Odalys Brandreth",
        Address = "14 Quarry Lane, Sorrel Mills",
        Heading = "Service report",
        At = At,
        Technician = "Ines Calloway",
        Appliance = "Damper-regulated top-feed insert, serial QL-20417, built 2018.",
        Site = ["640 m above sea level; outdoors −4 °C, room 21 °C, wind 2 m/s. Vent 76 mm, 5.5 m rise, flexible liner, vertical cap."],
        Answer = new(Use.Yes, "It is clean, it draws as it should, and it ran for 40 minutes while we watched."),
        Found = ["Ash had closed about half of the passages behind the fire. Air could not get through, so a safety switch stopped the pellets after 17 minutes. The switch did its job. No part had failed."],
        Did = ["Cleaned the ash passages, both blowers and the vent. Fitted a new gasket to the combustion blower. Lit the stove, measured it again, and found no carbon monoxide in the room."],
        ShouldDo =
        [
            "Scrape the burn pot before you light it.",
            "Empty the ash every ten bags. Keep it a full day in a metal bucket with a lid, outdoors, away from the house.",
            "Smell of smoke, or the CO alarm sounds? Go outdoors, then call the fire service, then us.",
        ],
        Next = new("Middle of October 2027", "or after about 90 bags, whichever comes first. Last time it went 110 bags, and that was too many.",
            new(2027, 9, 27), new(2027, 10, 15), new(2027, 11, 4)),
        Signatures = [new("Ines Calloway", "technician", At.AddMinutes(-3)), new("Odalys Brandreth", "customer", At)],
        ProfileFound = Samples.Choked with { Title = "As found, high burn" },
        ProfileLeft = Samples.Cleaned with { Title = "As left, high burn" },
        Areas =
        [
            new("Combustion blower", new(0.04, 0.09, 0.15), new(0.01, 0.03, 0.08), 0.25),
            new("Room-air blower", new(0.16, 0.24, 0.33), new(0.01, 0.04, 0.10), 0.45),
            new("Ash passages", new(0.46, 0.52, 0.58), new(0.02, 0.05, 0.11), 0.44),
            new("Vent", new(0.05, 0.12, 0.21), new(0.01, 0.04, 0.10), 0.40),
        ],
        Readings =
        [
            Row("Firebox", "High burn", Measure.Pressure, -7, "too weak", -26, -18, -21),
            Row("Blower inlet", "High burn", Measure.Pressure, -79, "too strong", -72, -60, -65),
            Row("Vent collar", "High burn", Measure.Pressure, -5, "low", -2, 4, 1),
            Row("Oxygen in flue gas", "High burn", Measure.Oxygen, 6.1, "low", 9.6, 13.1, 11.4),
            Row("Carbon monoxide in flue gas", "High burn", Measure.CarbonMonoxide, 1240, "high", null, 400, 210),
            Row("Exhaust at the collar", "High burn", Measure.Temperature, 231, "hot", 150, 205, 178),
            Row("Carbon monoxide in the room", "High burn", Measure.CarbonMonoxide, 0, null, null, 9, 0),
            Row("Firebox", "Fan only", Measure.Pressure, -9, "too weak", -34, -24, -30),
            Row("Blower inlet", "Fan only", Measure.Pressure, -72, "too strong", -66, -54, -61),
            Row("Supply", "Fan only", Measure.Voltage, 121, null, 110, 126, 121) with { Origin = "standard" },
            Row("Feed motor winding", "Plug out", Measure.Resistance, 92, null, 25, 150, null),
        ],
        Suspects =
        [
            new("Ash passages past their limit", 0.93, ["Firebox −7 Pa where −26 to −18 is healthy: odds × 14.", "Blower inlet −79 Pa where −72 to −60 is healthy: odds × 6.2."], 0.004),
            new("Exchanger insulated by its deposit", 0.41, ["Exhaust 231 °C where 150 to 205 is healthy: odds × 3.8."], 0.02),
            new("Vacuum switch drifted", 0.03, ["Closed at −9.6 Pa on the hand pump: odds × 0.1."]),
        ],
        SuspectNotes = ["Ash passages and exchanger were not told apart by these ports; both were cleaned."],
        Proofs =
        [
            new("Sensing hose off: feed stops", "after 4 s", true),
            new("Lid open: feed stops", "at once", true),
            new("Shutdown and run-on watched", "blower stopped by itself after 22 min", true),
            new("Smoke pencil on every joint opened", "nothing drawn out", true),
        ],
        Instruments =
        [
            "Pressure gauge DM-2: 0.1 Pa, calibrated until 3 May 2027.",
            "Flue gas analyser F1: O₂ ±0.3 %, calibrated until 14 February 2027.",
            "CO meter C4: zeroed outdoors today.",
        ],
        Parts = ["Fitted: combustion blower gasket."],
        Limitations = ["The liner was inspected from below only; the cap was not reached because of ice on the roof."],
        Sources =
        [
            "Healthy bands: computed for this construction, vent, altitude and day; card of the stove, then the last visit.",
            "CO in the room: EPA ambient standard, 9 ppm over 8 h.",
            "Limits of areas: where the vacuum switch would open.",
        ],
        Seal = "7c1e90ab44d25f3308ba19d2c6e07f415a3bb0c1de9972e64480fd1735ac6e02",
        EngineVersion = "0.1.0",
    };

    public static ReportInput Refused { get; } = Cleaned with
    {
        Heading = "Breakdown report",
        Answer = new(Use.No, "Exhaust is getting into the room at the blower. It is unplugged and tagged."),
        Found = ["The gasket of the combustion blower has broken up. Exhaust comes out beside the blower while the stove runs, and carbon monoxide in the room rose to 41 ppm."],
        Did = ["Let the fire burn out, unplugged the stove, aired the room, hung a tag on the plug."],
        ShouldDo = ["Do not plug it in, and do not burn anything in it.", "Heat by other means; we come back with the part."],
        Next = new("Thursday, 26 November 2026", "with the gasket, between 8 and 10.") { Return = true },
        ProfileLeft = null,
        Seal = null,
        Signatures = [new("Ines Calloway", "technician", At), new("Odalys Brandreth", "customer", null, Absent: true)],
    };

    public static ReportInput Limited { get; } = Cleaned with
    {
        Answer = new(Use.YesWithLimits, "Only on low until the door gasket is replaced: the door leaks, and on high the glass soots over within a day."),
        Units = Stove.Quantities.UnitSystem.Us,
    };

    private static ReadingRow Row(string name, string condition, Measure measure, double? found, string? verdict, double? low, double? high, double? left) =>
        new(name, condition, measure) { Found = found, FoundVerdict = verdict, Low = low, High = high, Confidence = 0.9, Origin = "card", Left = left };
}
