namespace Emberwright.Stove.Fire;

/// <summary>Builds the figures of a flue gas measurement, given ones first. The same options give the same ids in the same order.</summary>
internal static class FlueFigures
{
    private const string Balance = "element balance of the fuel";

    /// <summary>All figures, without uncertainty.</summary>
    public static IReadOnlyList<Figure> Of(FlueOptions o)
    {
        var figures = new List<Figure>(48);
        var stoichiometry = Stoichiometry(o);
        var gas = Gas(o, stoichiometry);
        var heat = HeatingValue.Of(o.Fuel);
        AddGiven(figures, o);
        AddFuel(figures, o, stoichiometry, heat);
        AddGas(figures, o, stoichiometry, gas);
        if (o.CarbonMonoxidePpm is not null) AddCarbonMonoxide(figures, gas);
        AddLosses(figures, o, gas, heat);
        if (o.FuelKgPerHour is { } rate) AddFlows(figures, o, gas, heat, rate);
        return figures;
    }

    private static Stoichiometry Stoichiometry(FlueOptions o) =>
        new(o.Fuel, new CombustionAir(Saturation.HumidityKgPerKg(o.HumidityPercent / 100, o.RoomC + 273.15, o.PressurePa)));

    private static FlueGas Gas(FlueOptions o, Stoichiometry s)
    {
        var co = o.CarbonMonoxidePpm.GetValueOrDefault() * 1e-6;
        var ratio = o.OxygenPercent is { } oxygen
            ? AirRatio.FromOxygen(s, oxygen / 100, o.Basis, co)
            : AirRatio.FromCarbonDioxide(s, o.CarbonDioxidePercent!.Value / 100, o.Basis, co);
        return s.FlueGasAt(ratio, co, o.Basis);
    }

    private static void AddGiven(List<Figure> to, FlueOptions o)
    {
        var basis = o.Basis == Basis.Dry ? "dry" : "wet";
        if (o.OxygenPercent is { } oxygen) Given("oxygen", $"O2 as read ({basis})", oxygen, "%");
        if (o.CarbonDioxidePercent is { } co2) Given("carbon-dioxide", $"CO2 as read ({basis})", co2, "%");
        if (o.CarbonMonoxidePpm is { } co) Given("carbon-monoxide", $"CO as read ({basis})", co, "ppm");
        Given("flue-temperature", "flue gas temperature", o.FlueC, "°C");
        Given("room-temperature", "room temperature", o.RoomC, "°C");
        Given("pressure", "absolute pressure", o.PressurePa, "Pa");
        Given("humidity", "relative humidity of the combustion air", o.HumidityPercent, "%");
        if (o.FuelKgPerHour is { } rate) Given("fuel-rate", "fuel rate", rate, "kg/h");

        void Given(string id, string name, double value, string unit) => to.Add(new(id, name, value, unit, "", "entered"));
    }

    private static void AddFuel(List<Figure> to, FlueOptions o, Stoichiometry s, HeatingValue heat)
    {
        var dry = o.Fuel.Dry;
        (string Id, string Name, double Share)[] parts =
        [
            ("fuel-carbon", "C", dry.Carbon), ("fuel-hydrogen", "H", dry.Hydrogen), ("fuel-oxygen", "O", dry.Oxygen),
            ("fuel-nitrogen", "N", dry.Nitrogen), ("fuel-sulfur", "S", dry.Sulfur), ("fuel-ash", "ash", dry.Ash),
        ];
        foreach (var (id, name, share) in parts) to.Add(new(id, $"{name} of {o.Fuel.Name}, dry", 100 * share, "%", "", o.Fuel.Origin));
        to.Add(new("fuel-moisture", "moisture as fired", 100 * o.Fuel.Moisture, "%", "", o.Fuel.Origin));
        string[] analysis = [.. parts.Select(part => part.Id)];

        to.Add(o.Fuel.GrossDryJPerKg is null
            ? new("gross-heat", "gross heating value, dry", heat.GrossDryJPerKg / 1e6, "MJ/kg",
                "0.3491 C + 1.1783 H + 0.1005 S − 0.1034 O − 0.0151 N − 0.0211 ash", "Channiwala & Parikh, Fuel 81 (2002) 1051–1063", analysis)
            : new("gross-heat", "gross heating value, dry", heat.GrossDryJPerKg / 1e6, "MJ/kg", "", o.Fuel.Origin));
        to.Add(new("net-heat", "net heating value, as fired", heat.NetJPerKg / 1e6, "MJ/kg",
            "(gross − 0.2122 H − 0.0008 (O + N))(1 − W/100) − 0.02443 W", "ISO 18125:2017", "gross-heat", "fuel-hydrogen", "fuel-oxygen", "fuel-nitrogen", "fuel-moisture"));
        to.Add(new("air-need", "dry air needed per fuel", s.DryAirKgPerKg, "kg/kg", "(C + H/4 + S − O/2)/0.20946 in mol, times 28.965 g/mol", Balance,
            [.. analysis, "fuel-moisture"]));
        to.Add(new("carbon-dioxide-max", "highest possible CO2, dry", 100 * s.CarbonDioxideMax, "%", "CO2/(dry flue gas) at λ = 1", Balance, analysis));
    }

    private static void AddGas(List<Figure> to, FlueOptions o, Stoichiometry s, FlueGas gas)
    {
        string[] readings = o.CarbonMonoxidePpm is null ? [] : ["carbon-monoxide"];
        string[] fuel = ["air-need", "carbon-dioxide-max", "fuel-moisture", "humidity"];
        to.Add(o.OxygenPercent is not null
            ? new("air-ratio", "air ratio λ", gas.AirRatio, "", "1 + y·V/(A·(O2 of air − y)), y = (O2 − CO/2)/(1 − CO/2)", Balance, ["oxygen", .. readings, .. fuel])
            : new("air-ratio", "air ratio λ", gas.AirRatio, "", "1 + (V_CO2 − z·V)/(A·(z − CO2 of air)), z = (CO2 + CO)/(1 − CO/2)", Balance, ["carbon-dioxide", .. readings, .. fuel]));
        string[] inputs = ["air-ratio", .. readings, .. fuel];
        const string share = "share of one gas in the products at λ = 1 plus (λ − 1) air";
        to.Add(new("oxygen-dry", "O2, dry", 100 * gas.OxygenDry, "%", share, Balance, inputs));
        to.Add(new("oxygen-wet", "O2, wet", 100 * gas.OxygenWet, "%", share, Balance, inputs));
        to.Add(new("carbon-dioxide-dry", "CO2, dry, by balance", 100 * gas.CarbonDioxideDry, "%", share, Balance, inputs));
        to.Add(new("carbon-dioxide-wet", "CO2, wet, by balance", 100 * gas.CarbonDioxideWet, "%", share, Balance, inputs));
        to.Add(new("water-wet", "water vapour, wet", 100 * gas.WaterWet, "%", share, Balance, inputs));
        to.Add(new("dew-point", "water dew point of the flue gas", Saturation.DewPointK(gas, o.PressurePa) - 273.15, "°C",
            "temperature at which water vapour × pressure saturates", "IAPWS R7-97(2012), region 4", "water-wet", "pressure"));
        to.Add(new("air-per-fuel", "combustion air per fuel", gas.AirRatio * s.AirKgPerKg, "kg/kg", "λ · air needed, with its humidity", Balance, "air-ratio", "air-need", "humidity"));
        to.Add(new("flue-per-fuel", "flue gas per fuel", gas.MassKgPerKg, "kg/kg", "1 − ash + air", "mass balance", "air-per-fuel", "fuel-ash", "fuel-moisture"));
        to.Add(new("flue-density", "flue gas density", gas.DensityKgPerM3(o.FlueC + 273.15, o.PressurePa), "kg/m³", "p·M/(R·T)", "ideal gas", [.. inputs, "flue-temperature", "pressure"]));
    }

    private static void AddCarbonMonoxide(List<Figure> to, FlueGas gas)
    {
        var ppm = 1e6 * gas.CarbonMonoxideDry;
        var mg = CarbonMonoxide.NormalMgPerM3(ppm);
        to.Add(new("carbon-monoxide-dry", "CO, dry", ppm, "ppm", "CO/(flue gas without vapour)", Balance, "carbon-monoxide", "air-ratio"));
        to.Add(new("carbon-monoxide-mg", "CO, dry, 0 °C and 1013.25 hPa", mg, "mg/m³", "ppm · 28.010/22.414", "ideal gas", "carbon-monoxide-dry"));
        to.Add(new("carbon-monoxide-13", "CO at 13 % O2", CarbonMonoxide.AtThirteenPercent(ppm, gas.OxygenDry), "ppm", "CO · (21 − 13)/(21 − O2)", "EN 14785", "carbon-monoxide-dry", "oxygen-dry"));
        to.Add(new("carbon-monoxide-13-mg", "CO at 13 % O2", CarbonMonoxide.AtThirteenPercent(mg, gas.OxygenDry), "mg/m³", "CO · (21 − 13)/(21 − O2)", "EN 14785", "carbon-monoxide-mg", "oxygen-dry"));
        to.Add(new("carbon-monoxide-air-free", "CO, air-free", CarbonMonoxide.AirFree(ppm, gas.OxygenDry), "ppm", "CO · 20.9/(20.9 − O2)", "usage of ANSI Z21 and ASHRAE", "carbon-monoxide-dry", "oxygen-dry"));
    }

    private static void AddLosses(List<Figure> to, FlueOptions o, FlueGas gas, HeatingValue heat)
    {
        var measured = o.Basis == Basis.Dry && o.CarbonDioxidePercent is not null;
        var co2 = measured ? o.CarbonDioxidePercent!.Value / 100 : gas.CarbonDioxideDry;
        var co2Id = measured ? "carbon-dioxide" : "carbon-dioxide-dry";
        var enthalpy = FlueLoss.ByEnthalpy(gas, heat.NetJPerKg, o.FlueC + 273.15, o.RoomC + 273.15);
        var indirect = IndirectMethod.Of(o.Fuel, heat.NetJPerKg, co2, gas.CarbonMonoxideDry, o.FlueC, o.RoomC);
        string[] temperatures = ["flue-temperature", "room-temperature", "net-heat"];
        string[] co = o.CarbonMonoxidePpm is null ? [] : ["carbon-monoxide-dry"];
        const string nist = "NIST Chemistry WebBook, Shomate equations";
        const string standard = "EN 13240 and EN 14785, indirect method";

        to.Add(new("loss-sensible", "loss by hot flue gas, by enthalpy", 100 * enthalpy.Sensible, "%", "(H(flue) − H(room))/net heating value", nist, ["air-ratio", .. co, .. temperatures]));
        to.Add(new("loss-unburnt", "loss by CO, by enthalpy", 100 * enthalpy.Unburnt, "%", "CO per fuel · 282.98 kJ/mol/net heating value", "CODATA", ["air-ratio", .. co, "net-heat"]));
        to.Add(new("efficiency", "efficiency by enthalpy, on net heating value", 100 * enthalpy.Efficiency, "%", "100 − losses", "energy balance", "loss-sensible", "loss-unburnt"));
        to.Add(new("loss-sensible-indirect", "loss by hot flue gas, indirect method", 100 * indirect.Sensible, "%", "(t_flue − t_room)(c_dry·dry gas + c_vapour·vapour)/net heating value", standard,
            [co2Id, .. co, .. temperatures, "fuel-carbon", "fuel-hydrogen", "fuel-moisture"]));
        to.Add(new("loss-unburnt-indirect", "loss by CO, indirect method", 100 * indirect.Unburnt, "%", "12644 kJ/m³ · CO · dry gas/net heating value", standard, [co2Id, .. co, "net-heat", "fuel-carbon", "fuel-moisture"]));
        to.Add(new("efficiency-indirect", "efficiency, indirect method, on net heating value", 100 * indirect.Efficiency, "%", "100 − losses, without loss below the grate", standard, "loss-sensible-indirect", "loss-unburnt-indirect"));
        var gross = heat.GrossDryJPerKg * (1 - o.Fuel.Moisture);
        to.Add(new("efficiency-gross", "efficiency by enthalpy, on gross heating value", 100 * enthalpy.Efficiency * heat.NetJPerKg / gross, "%", "efficiency · net/gross as fired", "definition", "efficiency", "net-heat", "gross-heat", "fuel-moisture"));
    }

    private static void AddFlows(List<Figure> to, FlueOptions o, FlueGas gas, HeatingValue heat, double kgPerHour)
    {
        var input = kgPerHour / 3600 * heat.NetJPerKg / 1000;
        var efficiency = to.Find(figure => figure.Id == "efficiency")!.Value / 100;
        var flue = kgPerHour / 3600 * gas.MassKgPerKg;
        to.Add(new("heat-input", "heat input", input, "kW", "fuel rate · net heating value", "definition", "fuel-rate", "net-heat"));
        to.Add(new("heat-output", "heat to the room", input * efficiency, "kW", "heat input · efficiency", "definition", "heat-input", "efficiency"));
        to.Add(new("flue-flow", "flue gas flow", 1000 * flue, "g/s", "fuel rate · flue gas per fuel", "mass balance", "fuel-rate", "flue-per-fuel"));
        to.Add(new("flue-volume", "flue gas flow at its temperature", 3600 * flue / gas.DensityKgPerM3(o.FlueC + 273.15, o.PressurePa), "m³/h", "flow/density", "definition", "flue-flow", "flue-density"));
        to.Add(new("ash-rate", "ash", kgPerHour * o.Fuel.AshAsFired * 1000, "g/h", "fuel rate · ash as fired", "definition", "fuel-rate", "fuel-ash", "fuel-moisture"));
    }
}
