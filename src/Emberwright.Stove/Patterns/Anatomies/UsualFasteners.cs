namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>Fasteners as most stoves have them; typical, from memory.</summary>
internal static class UsualFasteners
{
    public static Fastener Screws(int count, string size, Drive drive = Drive.HexHead) =>
        new(FastenerKind.Screw, drive, size, count, Origin.Typical);

    public static Fastener Nuts(int count, string size) => new(FastenerKind.Nut, Drive.HexHead, size, count, Origin.Typical);

    public static Fastener ByHand(FastenerKind kind, int count) => new(kind, Drive.Hand, "", count, Origin.Typical);
}
