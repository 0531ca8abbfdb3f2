// How much heat and gas does the fuel give at the air it gets?
//   Q = ṁ·LHV·(1 − radiant)·η(λ),  η = λ/(1 + λ^m)^(1/m), m = 16
// Q heat to the gas, W; ṁ fuel as fired, kg/s; LHV lower heating value as fired, J/kg; λ air reaching the firebox over
// the air the fuel needs, –; η share of the fuel burnt: min(1, λ) without its kink.
// Valid λ ≥ 1; below, unburnt fuel piles up and the state is marked as starved. η(1) = 0.958, η(1.3) = 0.999.
// Heat of gas: air and the products of exactly burnt fuel, mixed by mass (enthalpies by NIST Shomate equations).
// Worked value: λ ≫ 1 → Q = ṁ·LHV·(1 − radiant).
using Emberwright.Stove.Fire;

namespace Emberwright.Stove.Air;

/// <summary>The fuel of one solve.</summary>
internal sealed class Burn
{
    private const double Sharpness = 16;
    private const double WaterLatentJPerKg = 2.443e6;

    private readonly HeatContent air = CombustionAir.Dry.HeatPerKg;
    private readonly HeatContent products;

    /// <summary>Products per share of fuel-born gas, kg/kg.</summary>
    private readonly double productsPerShare;

    public Burn(Fuel fuel, double fuelKgPerS, double extraMoisture, double radiantShare)
    {
        var nominal = new Stoichiometry(fuel);
        var net = HeatingValue.Of(fuel).NetJPerKg;
        var dryNet = (net + (WaterLatentJPerKg * fuel.Moisture)) / (1 - fuel.Moisture);
        Nominal = nominal;
        var moisture = fuel.Moisture + extraMoisture;
        DryScale = (1 - moisture) / (1 - fuel.Moisture);
        FuelKgPerS = fuelKgPerS;
        RadiantShare = radiantShare;
        AirKgPerKg = nominal.AirKgPerKg * DryScale;
        AshShare = fuel.AshAsFired * DryScale;
        HeatJPerKg = (dryNet * (1 - moisture)) - (WaterLatentJPerKg * moisture);
        HeatByMoisture = -dryNet - WaterLatentJPerKg;
        products = new HeatContent((1 / nominal.StoichiometricFlue.MassKg) * nominal.StoichiometricFlue);
        productsPerShare = nominal.StoichiometricFlue.MassKg / (1 - fuel.AshAsFired);
        DrynessSlope = -1 / (1 - fuel.Moisture);
    }

    private Burn(Burn other)
    {
        products = other.products;
        productsPerShare = other.productsPerShare;
        Nominal = other.Nominal;
        DryScale = other.DryScale;
        DrynessSlope = other.DrynessSlope;
        RadiantShare = other.RadiantShare;
        AirKgPerKg = other.AirKgPerKg;
        AshShare = other.AshShare;
        HeatJPerKg = other.HeatJPerKg;
        HeatByMoisture = other.HeatByMoisture;
    }

    /// <summary>No fuel.</summary>
    public Burn Without() => new(this);

    public Stoichiometry Nominal { get; }

    /// <summary>Dry fuel per fuel as fired, over that at nominal moisture.</summary>
    public double DryScale { get; }

    /// <summary>∂DryScale/∂moisture.</summary>
    public double DrynessSlope { get; }

    public double FuelKgPerS { get; }

    public double RadiantShare { get; }

    public double AirKgPerKg { get; }

    public double AshShare { get; }

    public double HeatJPerKg { get; }

    public double HeatByMoisture { get; }

    /// <summary>Gas born from the fuel, kg/s.</summary>
    public double GasKgPerS => FuelKgPerS * (1 - AshShare);

    /// <summary>Air the fuel needs, kg/s.</summary>
    public double NeedKgPerS => FuelKgPerS * AirKgPerKg;

    /// <summary>Share of the fuel burnt at an air ratio.</summary>
    public static double Completeness(double airRatio, out double slope)
    {
        if (airRatio <= 0)
        {
            slope = 1;
            return 0;
        }

        if (airRatio > 4)
        {
            slope = 0;
            return 1;
        }

        var power = Math.Pow(airRatio, Sharpness);
        var root = Math.Pow(1 + power, -1 / Sharpness);
        slope = root / (1 + power);
        return airRatio * root;
    }

    /// <summary>Heat of gas above 25 °C, J/kg.</summary>
    /// <param name="temperatureK">Gas temperature, K.</param>
    /// <param name="fuelShare">Mass share of gas born from the fuel.</param>
    /// <param name="byT">cp, J/(kg·K).</param>
    /// <param name="byShare">Slope by the fuel share, J/kg.</param>
    public double Heat(double temperatureK, double fuelShare, out double byT, out double byShare)
    {
        var h = air.At(temperatureK, out byT);
        if (fuelShare == 0 && FuelKgPerS == 0)
        {
            byShare = 0;
            return h;
        }

        var hot = products.At(temperatureK, out var hotByT);
        var share = fuelShare * productsPerShare;
        byT += share * (hotByT - byT);
        byShare = productsPerShare * (hot - h);
        return h + (share * (hot - h));
    }

    /// <summary>Air ratio of gas with this share of fuel-born gas.</summary>
    public double AirRatio(double fuelShare, out double slope)
    {
        var gas = 1 - AshShare;
        slope = -gas / (fuelShare * fuelShare * AirKgPerKg);
        return (1 - fuelShare) * gas / (fuelShare * AirKgPerKg);
    }
}
