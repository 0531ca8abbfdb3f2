namespace Emberwright.Stove.Air;

/// <summary>
/// Everything one solve is computed from, as numbers: the compiled links, the day, the fire and the blowers'
/// speeds. Built from a stove, its parameters and a condition; not changed by solving.
/// </summary>
internal sealed record Scenario
{
    public required LinkModel[] Links { get; init; }

    /// <summary>Factor on each link's loss.</summary>
    public required double[] LossFactor { get; init; }

    public required int NodeCount { get; init; }

    public required int FireNode { get; init; }

    public required double PressurePa { get; init; }

    public required double OutdoorK { get; init; }

    public required double RoomK { get; init; }

    public required bool OutsideAir { get; init; }

    public required double WindPa { get; init; }

    public required double HousePa { get; init; }

    public required double VentSurroundingsK { get; init; }

    public required double VentUaWPerK { get; init; }

    public required double Speed { get; init; }

    /// <summary>d ln speed / d ln supply voltage of the combustion blower; 0 while its speed is held.</summary>
    public required double BlowerSpeedByVoltage { get; init; }

    /// <summary>d ln speed / d ln supply voltage of an unregulated blower motor.</summary>
    public required double MotorSlope { get; init; }

    public required double HeadFactor { get; init; }

    public required double UaWPerK { get; init; }

    public required double StreamWPerK { get; init; }

    public required double StreamInK { get; init; }

    public required bool StreamIsWater { get; init; }

    public required Burn Burn { get; init; }

    /// <summary>The controller's task; null when the speed is given.</summary>
    public Regulation? Regulation { get; init; }

    /// <summary>Further ends of given pressure and temperature, in a network that is not a stove's.</summary>
    public GivenState[] Given { get; init; } = [];

    /// <summary>Index of the first of <see cref="Given"/> as a link's end; the next is one lower.</summary>
    public const int FirstGiven = -4;

    /// <summary>Share of the fire's heat that is switched on, for continuation; 1 in the answer.</summary>
    public double HeatShare { get; init; } = 1;

    public bool IsBurning => Burn.FuelKgPerS > 0;

    /// <summary>The same stove, day and blowers, no fuel.</summary>
    public Scenario WithoutFire() => this with { Burn = Burn.Without() };

    /// <summary>The controller held at a setting.</summary>
    public Scenario AtSetting(double setting) => this with { Regulation = null, Speed = Speed * setting };

    /// <summary>The stove on the way from clean (0) to as it is (1): ln of every loss factor times the share.</summary>
    public Scenario PartlyRestricted(double share) => this with { LossFactor = [.. LossFactor.Select(f => Math.Pow(f, share))] };

    public double OutdoorDensity => Atmosphere.DensityKgPerM3(PressurePa, OutdoorK);

    /// <summary>Room pressure against outdoors at the same height, Pa.</summary>
    public double RoomPa(double heightM) => HousePa
        + ((OutdoorDensity - Atmosphere.DensityKgPerM3(PressurePa, RoomK)) * Atmosphere.GravityMPerS2 * heightM);

    public double BoundaryPa(int end, double heightM) => end switch
    {
        -1 => RoomPa(heightM),
        -2 => OutsideAir ? 0 : RoomPa(heightM),
        -3 => WindPa,
        _ => Given[FirstGiven - end].PressurePa,
    };

    public double BoundaryK(int end) => end switch
    {
        -1 => RoomK,
        -2 => OutsideAir ? OutdoorK : RoomK,
        -3 => OutdoorK,
        _ => Given[FirstGiven - end].TemperatureK,
    };

    /// <summary>True when a boundary moves with the house's pressure.</summary>
    public bool FollowsHouse(int end) => end == -1 || (end == -2 && !OutsideAir);

    /// <summary>A link's duty at a setting of the controller (1 without one).</summary>
    public LinkDuty Duty(int link, double setting) => Links[link].ColdSide switch
    {
        ColdSide.None => new LinkDuty(PressurePa, LossFactor[link], Speed * setting, HeadFactor, 0, 0, 0),
        ColdSide.Stream => new LinkDuty(PressurePa, LossFactor[link], Speed * setting, HeadFactor, UaWPerK, StreamInK, StreamWPerK),
        ColdSide.VentSurroundings =>
            new LinkDuty(PressurePa, LossFactor[link], Speed * setting, HeadFactor, VentUaWPerK, VentSurroundingsK, 0),
    };
}

/// <summary>Given pressure (total, against still outdoor air at its height, Pa) and temperature, K.</summary>
internal readonly record struct GivenState(double PressurePa, double TemperatureK);
