namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>What kind of thing holds a panel.</summary>
public enum FastenerKind
{
    /// <summary>Screw or bolt.</summary>
    Screw,
    /// <summary>Nut on a stud.</summary>
    Nut,
    /// <summary>Wing nut.</summary>
    WingNut,
    /// <summary>Thumb screw.</summary>
    ThumbScrew,
    /// <summary>Latch or quarter-turn.</summary>
    Latch,
    /// <summary>Spring clip.</summary>
    Clip,
    /// <summary>Magnet.</summary>
    Magnet,
    /// <summary>Hooks or a ledge it hangs or stands on.</summary>
    Hook,
    /// <summary>Hinge it swings on; it stays.</summary>
    Hinge,
    /// <summary>Band clamp.</summary>
    Band,
    /// <summary>Twist or push fit.</summary>
    Twist,
}

/// <summary>The tool a fastener takes.</summary>
public enum Drive
{
    /// <summary>No tool.</summary>
    Hand,
    /// <summary>Hexagon head: nut driver, socket or spanner.</summary>
    HexHead,
    /// <summary>Cross recess.</summary>
    CrossRecess,
    /// <summary>Square recess.</summary>
    SquareRecess,
    /// <summary>Hexagon socket: hexagon key.</summary>
    HexSocket,
    /// <summary>Slot.</summary>
    Slot,
}

/// <summary>What holds a panel: kind, tool, size class and how many.</summary>
/// <param name="Kind">Screw, nut, latch, …</param>
/// <param name="Drive">The tool it takes.</param>
/// <param name="Size">Size class of that tool, e.g. <c>5/16 in</c>; empty where no tool is needed.</param>
/// <param name="Count">How many hold the panel (both or all alike panels together), 1 … 24.</param>
/// <param name="Origin">Where this comes from.</param>
public sealed record Fastener(FastenerKind Kind, Drive Drive, string Size, int Count, Origin Origin)
{
    /// <summary>In words, e.g. <c>4 screws, hex head 5/16 in</c>.</summary>
    public string Words
    {
        get
        {
            var (one, many) = NameOf(Kind);
            var tool = Drive == Drive.Hand ? "by hand" : NameOf(Drive) + (Size.Length > 0 ? " " + Size : "");
            return $"{Count} {(Count == 1 ? one : many)}, {tool}";
        }
    }

    private static (string One, string Many) NameOf(FastenerKind kind) => kind switch
    {
        FastenerKind.Screw => ("screw", "screws"),
        FastenerKind.Nut => ("nut", "nuts"),
        FastenerKind.WingNut => ("wing nut", "wing nuts"),
        FastenerKind.ThumbScrew => ("thumb screw", "thumb screws"),
        FastenerKind.Latch => ("latch", "latches"),
        FastenerKind.Clip => ("clip", "clips"),
        FastenerKind.Magnet => ("magnet", "magnets"),
        FastenerKind.Hook => ("hook or ledge", "hooks or ledges"),
        FastenerKind.Hinge => ("hinge", "hinges"),
        FastenerKind.Band => ("band clamp", "band clamps"),
        FastenerKind.Twist => ("twist or push fit", "twist or push fits"),
    };

    private static string NameOf(Drive drive) => drive switch
    {
        Drive.Hand => "by hand",
        Drive.HexHead => "hex head",
        Drive.CrossRecess => "cross recess",
        Drive.SquareRecess => "square recess",
        Drive.HexSocket => "hex socket",
        Drive.Slot => "slot",
    };
}
