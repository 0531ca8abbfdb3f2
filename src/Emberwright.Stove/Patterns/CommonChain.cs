using Emberwright.Stove.Air;

namespace Emberwright.Stove.Patterns;

/// <summary>
/// The air path all patterns share: intake, burn pot, firebox, exchanger, ash passages, combustion blower, vent, with their
/// leaks. A pattern states the sizes and adds what only it has.
/// </summary>
internal sealed record CommonChain
{
    private const string AirBox = "air-box";
    private const string Firebox = "firebox";
    private const string ExchangerEnd = "exchanger-end";
    private const string Inlet = "blower-inlet";
    private const string Collar = "collar";
    private const double LeakExponent = 0.65;
    private const double PressureSideLeak = 2e-6;

    /// <summary>The way air enters, from air supply to air box; see <see cref="Hole"/> for a plain damper or flapper.</summary>
    public required Link Intake { get; init; }

    /// <summary>Holes of the burn pot, m².</summary>
    public required double BurnPotM2 { get; init; }

    /// <summary>Leakage of each seam on the suction side, m³/(s·Paⁿ).</summary>
    public required double SeamLeak { get; init; }

    /// <summary>True when there is an ash door.</summary>
    public bool HasAshDoor { get; init; } = true;

    /// <summary>Cross-section of the exchanger's passages, m².</summary>
    public required double ExchangerM2 { get; init; }

    /// <summary>Cross-section of the ash passages, m².</summary>
    public required double AshPassagesM2 { get; init; }

    /// <summary>How the exchanger's cross-section is made up.</summary>
    public required PassageShape ExchangerShape { get; init; }

    /// <summary>How the ash passages' cross-section is made up.</summary>
    public required PassageShape AshShape { get; init; }

    /// <summary>The combustion blower.</summary>
    public required FanCurve Blower { get; init; }

    /// <summary>Where the sizes come from.</summary>
    public required Origin Sizes { get; init; }

    /// <summary>Links that only this pattern has; they may end at the chain's nodes.</summary>
    public IReadOnlyList<Link> Further { get; init; } = [];

    /// <summary>A damper's or flapper's hole as the intake.</summary>
    public static Link Hole(double areaM2, Origin origin) =>
        new Opening("intake", Boundary.AirSupply, AirBox, areaM2, 0.6, origin) { Scale = Parameter.Intake, IsIntake = true };

    /// <summary>A pipe as the intake.</summary>
    public static Link Pipe(double diameterM, double lengthM, double loss, Origin origin) =>
        new Passage("intake", Boundary.AirSupply, AirBox, Math.PI * diameterM * diameterM / 4, diameterM, lengthM, 0.0002, loss, origin)
        { Scale = Parameter.Intake, IsIntake = true };

    /// <summary>The whole air path.</summary>
    public Topology Build() => new(
        [new Node(AirBox, 0.15), new Node(Firebox, 0.35), new Node(ExchangerEnd, 0.60), new Node(Inlet, 0.15), new Node(Collar, 0.20)],
        [
            Intake,
            new Opening("burn-pot", AirBox, Firebox, BurnPotM2, 0.6, Sizes) { Scale = Parameter.BurnPot, IsPotAir = true },
            .. Further,
            Seam("door", Firebox, Parameter.DoorLeak) with { DoorOpenAreaM2 = 0.10 },
            .. HasAshDoor ? [Seam("ash-door", Firebox, Parameter.AshDoorLeak)] : Array.Empty<Link>(),
            Seam("lid", Firebox, Parameter.LidLeak),
            Passage.Chamber("exchanger", Firebox, ExchangerEnd, ExchangerM2, 1, Sizes)
                with { Scale = Parameter.Exchanger, ColdSide = ColdSide.Stream, Shape = ExchangerShape },
            Passage.Chamber("ash-passages", ExchangerEnd, Inlet, AshPassagesM2, 1, Sizes) with { Scale = Parameter.AshPassages, Shape = AshShape },
            Seam("exhaust-covers", ExchangerEnd, Parameter.ExhaustLeak),
            new Blower("combustion-blower", Inlet, Collar, Blower, Sizes),
            Joint("blower-gasket", Parameter.BlowerGasketLeak),
            Joint("vent-joints", Parameter.VentLeak),
            new VentLink("vent", Collar, Boundary.Terminal, Origin.Memory) { Scale = Parameter.Vent },
        ],
        FireNode: Firebox,
        FlueNode: Collar);

    /// <summary>The three ports all patterns have.</summary>
    /// <param name="fireboxName">What the trade calls the firebox of this family.</param>
    /// <param name="collarMm">Inside diameter at the collar, mm.</param>
    public static IReadOnlyList<Port> Ports(string fireboxName, double collarMm) =>
    [
        new(Places.Firebox, fireboxName, Firebox, 0.40),
        new(Places.BlowerInlet, "blower inlet", Inlet, 0.15),
        new(Places.Collar, "vent collar", Collar, 0.25, Math.PI * collarMm * collarMm * 1e-6 / 4, "vent"),
    ];

    private Crack Seam(string id, string node, Parameter scale) =>
        new(id, Boundary.Room, node, SeamLeak, LeakExponent, Origin.Memory) { Scale = scale };

    private static Crack Joint(string id, Parameter scale) =>
        new(id, Collar, Boundary.Room, PressureSideLeak, LeakExponent, Origin.Memory) { Scale = scale };
}
