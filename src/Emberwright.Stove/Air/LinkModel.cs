// What is the loss of one link at a flow, and how does the gas leave it?
//   opening, crack   Δp = K·ρ^−r·F_m(q)           opening: m = 2, r = 1, K = 1/(2(C_d·A)²)
//                                                 crack:   m = r = 1/n, K = C^−m
//   passage          Δp = (ψ(Re)·L/D + Σζ)·q|q|/(2ρA²)
//   blower           Δp = −rise(q/ρ, s, ρ)        see FanCurve
//   outlet           T_out = T_in − P·(T_in − T_s);  mean over length T_m = T_s + (T_in − T_s)·P/(−ln(1−P))
// Δp loss of total pressure, Pa; q mass flow, kg/s; ρ = p/(R·T_m), kg/m³; F_m see SmoothPower; ψ see Friction;
// P see CounterflowEffectiveness, its cp taken as 1100 J/(kg·K); T_in from whichever end the gas comes, blended
// smoothly over |q| < 3e-6 kg/s. Openings and cracks take the density of the gas that enters them.
// The conductance parameter x of a link multiplies its loss by e^(−m·x).
// Assumes incompressible flow (Δp ≪ 1e5 Pa) and the gas constant of air for flue gas (within 1 %).
// Source: ASHRAE Handbook Fundamentals, chapters on duct design and infiltration, from memory.
// Worked value: opening 0.01 m², C_d 0.6, 293.15 K, 10 Pa → 0.0294 kg/s (Modelica Buildings OneWayFlow table).
using Emberwright.Stove.Heat;

namespace Emberwright.Stove.Air;

internal enum LinkKind
{
    Power,
    Passage,
    Blower,
}

/// <summary>One link reduced to numbers.</summary>
internal readonly record struct LinkModel
{
    public const double GasHeatCapacity = 1100;

    public required LinkKind Kind { get; init; }

    /// <summary>Node index, or −1 room, −2 air supply, −3 terminal.</summary>
    public required int From { get; init; }

    public required int To { get; init; }

    /// <summary>Height at which a boundary end is joined, m above floor.</summary>
    public double HeightM { get; init; }

    /// <summary>Height gained from From to To, m.</summary>
    public double RiseM { get; init; }

    public double K { get; init; }

    public double Exponent { get; init; }

    public double DensityExponent { get; init; }

    public double AreaM2 { get; init; }

    public double DiameterM { get; init; }

    public double LengthM { get; init; }

    public double RelativeRoughness { get; init; }

    public double Loss { get; init; }

    public FanCurve? Curve { get; init; }

    public ColdSide ColdSide { get; init; }

    public int Scale { get; init; }

    /// <summary>Temperature its air is held to whatever the flow, K; 0 takes that of the end it comes from.</summary>
    public double HeldK { get; init; }

    public bool IsIntake { get; init; }

    public bool IsPotAir { get; init; }

    public bool IsVent { get; init; }
}

/// <summary>Conditions at which a link is evaluated, equal for all points of one solve.</summary>
internal readonly record struct LinkDuty(
    double PressurePa, double LossFactor, double Speed, double HeadFactor, double UaWPerK, double SinkK, double StreamWPerK);

/// <summary>A link at one flow and pair of end temperatures, with slopes.</summary>
internal struct LinkPoint
{
    public double Loss, LossByQ, LossByT, LossBySpeed, LossByHead;
    public double Share, ShareByQ;
    public double In, InByQ, Out, OutByIn, OutByQ, OutByLnUa, OutByLnStream, OutBySink;
    public double Mean, MeanByIn, MeanByQ, MeanByLnUa, MeanByLnStream;
    public double Density, Effectiveness;

    public void Evaluate(in LinkModel link, in LinkDuty duty, double q, double fromK, double toK)
    {
        if (link.HeldK > 0)
        {
            fromK = toK = link.HeldK;
        }

        var size = SmoothPower.Size(q, out var sizeByQ);
        Share = 0.5 * (1 + sizeByQ);
        ShareByQ = 0.5 * SmoothPower.EpsilonKgPerS * SmoothPower.EpsilonKgPerS / (size * size * size);
        In = (Share * fromK) + ((1 - Share) * toK);
        InByQ = ShareByQ * (fromK - toK);
        if (duty.UaWPerK > 0)
        {
            Cool(duty, size, sizeByQ);
        }
        else
        {
            Effectiveness = OutByQ = OutByLnUa = OutByLnStream = OutBySink = MeanByQ = MeanByLnUa = MeanByLnStream = 0;
            Out = Mean = In;
            OutByIn = MeanByIn = 1;
        }

        Density = duty.PressurePa / (Atmosphere.AirGasConstant * Mean);
        LossBySpeed = LossByHead = 0;
        switch (link.Kind)
        {
            case LinkKind.Power:
                var k = link.K * duty.LossFactor * (link.DensityExponent == 1 ? 1 / Density : Math.Pow(Density, -link.DensityExponent));
                Loss = k * SmoothPower.Of(q, link.Exponent, out var powerSlope);
                LossByQ = k * powerSlope;
                LossByT = link.DensityExponent * Loss / Mean;
                break;
            case LinkKind.Passage:
                Resist(link, duty, q, size, sizeByQ);
                break;
            case LinkKind.Blower:
                Blow(link.Curve!, duty, q);
                break;
        }
    }

    private void Cool(in LinkDuty duty, double size, double sizeByQ)
    {
        var capacity = size * LinkModel.GasHeatCapacity;
        var n = duty.UaWPerK / capacity;
        var r = duty.StreamWPerK > 0 ? capacity / duty.StreamWPerK : 0;
        var p = CounterflowEffectiveness.Of(n, r, out var byLnC, out var byLnUa, out var byLnC2);
        var byQ = byLnC * sizeByQ / size;
        var mean = CounterflowEffectiveness.MeanShare(p, out var meanByP);
        var over = In - duty.SinkK;
        Effectiveness = p;
        Out = In - (p * over);
        OutByIn = 1 - p;
        OutBySink = p;
        OutByQ = -byQ * over;
        OutByLnUa = -byLnUa * over;
        OutByLnStream = -byLnC2 * over;
        Mean = duty.SinkK + (mean * over);
        MeanByIn = mean;
        MeanByQ = meanByP * byQ * over;
        MeanByLnUa = meanByP * byLnUa * over;
        MeanByLnStream = meanByP * byLnC2 * over;
    }

    private void Resist(in LinkModel link, in LinkDuty duty, double q, double size, double sizeByQ)
    {
        var zeta = link.Loss;
        double zetaByLnRe = 0;
        if (link.LengthM > 0)
        {
            var reynolds = size * link.DiameterM / (link.AreaM2 * Viscosity.OfAir(Mean));
            var friction = Friction.Factor(reynolds, link.RelativeRoughness, out var slope);
            zeta += friction * link.LengthM / link.DiameterM;
            zetaByLnRe = slope * link.LengthM / link.DiameterM;
        }

        var k = duty.LossFactor / (2 * Density * link.AreaM2 * link.AreaM2);
        Loss = k * zeta * q * size;
        LossByQ = k * ((zeta * (size + (q * sizeByQ))) + (zetaByLnRe * q * sizeByQ));
        LossByT = (Loss / Mean) - (k * q * size * zetaByLnRe * Viscosity.LogSlopePerK(Mean));
    }

    private void Blow(FanCurve curve, in LinkDuty duty, double q)
    {
        var rest = curve.DensityKgPerM3;
        var drag = SmoothPower.Of(q, 2, out var dragByQ);
        var push = Density / rest * curve.ShutOffPa;
        var s = duty.Speed;
        Loss = (-push * duty.HeadFactor * s * s) + (curve.Linear * s * q / rest) + (curve.Quadratic * drag / (Density * rest));
        LossByQ = (curve.Linear * s / rest) + (curve.Quadratic * dragByQ / (Density * rest));
        LossByT = ((push * duty.HeadFactor * s * s) + (curve.Quadratic * drag / (Density * rest))) / Mean;
        LossBySpeed = (-2 * push * duty.HeadFactor * s) + (curve.Linear * q / rest);
        LossByHead = -push * s * s;
    }
}
