using Emberwright.Reports.Pictures.Profile;

namespace Emberwright.Reports.Tests;

/// <summary>Invented stoves and days that the tests draw.</summary>
internal static class Samples
{
    public static ProfileInput Choked { get; } = new()
    {
        Title = "Pressure profile, as found at high burn",
        Stations =
        [
            new("firebox", "firebox", new(-26, -22, -18)) { ShortName = "fire", ReadingPa = -7, LastPa = -21, PredictedPa = -7 },
            new("blower-inlet", "blower inlet", new(-72, -66, -60)) { ShortName = "blower", ReadingPa = -79, LastPa = -65, PredictedPa = -79 },
            new("collar", "collar", new(-2, 1, 4)) { ShortName = "vent", ReadingPa = -5, LastPa = 1, PredictedPa = -5 },
        ],
        Parts = ["inlet, pot", "ash passages", "blower", "vent"],
        Outdoors = new(-2, 0, 2),
        Thresholds = [new("firebox", -10, "vacuum switch", "opens at −10 Pa")],
        PredictionCaption = "if ash passages are half blocked",
    };

    public static ProfileInput Cleaned { get; } = Choked with
    {
        Title = "Pressure profile, as left at high burn",
        Moment = Moment.Left,
        PredictionCaption = null,
        Stations =
        [
            Choked.Stations[0] with { ReadingPa = -21, PredictedPa = null },
            Choked.Stations[1] with { ReadingPa = -65, PredictedPa = null },
            Choked.Stations[2] with { ReadingPa = 1, PredictedPa = null },
        ],
    };

    public static ProfileInput OnePort { get; } = new()
    {
        Title = "Pressure profile, one port",
        Stations = [new("firebox", "firebox", new(-34, -29, -24)) { ReadingPa = -41 }],
        Parts = ["inlet, pot", "ash passages, blower, vent"],
        Unit = Pictures.PressureUnit.InchOfWater,
        SecondUnit = Pictures.PressureUnit.Pascal,
    };

    public static ProfileInput NestInCap { get; } = new()
    {
        Title = "Pressure profile, vent blocked, five ports, one not read",
        Stations =
        [
            new("inlet", "air inlet", new(-8, -6, -4)) { ReadingPa = -3.2 },
            new("firebox", "firebox", new(-26, -22, -18)) { ReadingPa = -13 },
            new("ash-chamber", "ash chamber", new(-60, -52, -45)),
            new("blower-inlet", "blower inlet", new(-72, -66, -60)) { ReadingPa = -44 },
            new("collar", "vent collar", new(-2, 1, 4)) { ReadingPa = 39 },
        ],
        Parts = ["inlet hose", "burn pot", "exchanger", "ash passages", "combustion blower", "vent"],
        Thresholds = [new("blower-inlet", -30, "vacuum switch", "opens at −30 Pa")],
        PredictionCaption = "if the cap is three quarters blocked",
    };

    public static ProfileInput Calm { get; } = new()
    {
        Title = "Pressure profile, blower off",
        Stations =
        [
            new("firebox", "firebox", new(-3, -1.5, 0)) { ReadingPa = -1.2 },
            new("blower-inlet", "blower inlet", new(-3, -1.6, 0)) { ReadingPa = -2 },
            new("collar", "collar", new(-5, -3, -1)) { ReadingPa = -2.8 },
        ],
        Parts = ["inlet, pot", "ash passages", "blower", "vent"],
    };
}
