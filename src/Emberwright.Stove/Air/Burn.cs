// How much heat and gas does the fuel give at the air it gets?
//   Q = ṁ·LHV·(1 − radiant)·η(λ),  η = λ/(1 + λ^m)^(1/m), m = 16
// Q heat to the gas, W; ṁ fuel as fired, kg/s; LHV lower heating value as fired, J/kg; λ air reaching the firebox over
// the air the fuel needs, –; η share of the fuel burnt: min(1, λ) without its kink.
// Valid λ ≥ 1; below, unburnt fuel piles up and the state is marked as starved. η(1) = 0.958, η(1.3) = 0.999.
// Heat of gas: air and the products of exactly burnt fuel, mixed by mass (enthalpies by NIST Shomate equations).
// Worked value: λ ≫ 1 → Q = ṁ·LHV·(1 − radiant).
using Emberwright.Stove.Fire;

namespace Emberwright.Stove.Air;

/// <summary>What of the fuel does not change between solves.</summary>
internal sealed class FuelBasis
{
    public const double WaterLatentJPerKg = 2.443e6;

    public FuelBasis(Fuel fuel)
    {
        Fuel = fuel;
        Nominal = new Stoichiometry(fuel);
        DryNetJPerKg = (HeatingValue.Of(fuel).NetJPerKg + (WaterLatentJPerKg * fuel.Moisture)) / (1 - fuel.Moisture);
        Products = new HeatContent((1 / Nominal.StoichiometricFlue.MassKg) * Nominal.StoichiometricFlue);
        ProductsPerShare = Nominal.StoichiometricFlue.MassKg / (1 - fuel.AshAsFired);
    }

    public Fuel Fuel { get; }

    public Stoichiometry Nominal { get; }

    /// <summary>Net heating value of the dry part, J/kg.</summary>
    public double DryNetJPerKg { get; }

    /// <summary>Heat of one kilogram of exactly burnt gas.</summary>
    public HeatContent Products { get; }

    /// <summary>Products per share of fuel-born gas, kg/kg.</summary>
    public double ProductsPerShare { get; }
}

/// <summary>The fuel of one solve.</summary>
internal sealed class Burn
{
    private const double Sharpness = 16;

    private readonly HeatContent air = CombustionAir.Dry.HeatPerKg;
    private readonly HeatContent products;
    private readonly double productsPerShare;
    private readonly FuelBasis basis;

    public Burn(FuelBasis basis, double fuelKgPerS, double extraMoisture, double radiantShare)
    {
        this.basis = basis;
        var fuel = basis.Fuel;
        var moisture = fuel.Moisture + extraMoisture;
        products = basis.Products;
        productsPerShare = basis.ProductsPerShare;
        Nominal = basis.Nominal;
        DryScale = (1 - moisture) / (1 - fuel.Moisture);
        DrynessSlope = -1 / (1 - fuel.Moisture);
        ExtraMoisture = extraMoisture;
        FuelKgPerS = fuelKgPerS;
        RadiantShare = radiantShare;
        AirKgPerKg = Nominal.AirKgPerKg * DryScale;
        AshShare = fuel.AshAsFired * DryScale;
        HeatJPerKg = (basis.DryNetJPerKg * (1 - moisture)) - (FuelBasis.WaterLatentJPerKg * moisture);
        HeatByMoisture = -basis.DryNetJPerKg - FuelBasis.WaterLatentJPerKg;
    }

    /// <summary>Plain air, for networks without a fire.</summary>
    public static Burn None { get; } = new(new FuelBasis(Fuels.PelletsA1), 0, 0, 0);

    /// <summary>No fuel.</summary>
    public Burn Without() => new(basis, 0, ExtraMoisture, RadiantShare);

    public Stoichiometry Nominal { get; }

    public double ExtraMoisture { get; }

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
