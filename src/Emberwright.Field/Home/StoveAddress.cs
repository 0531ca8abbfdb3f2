namespace Emberwright.Field.Home;

/// <summary>The address of a stove's page.</summary>
public static class StoveAddress
{
    /// <summary>The address, from a stove's key.</summary>
    public static string Of(string stove) => $"stoves/{Uri.EscapeDataString(stove).Replace("%2F", "~", StringComparison.Ordinal)}";

    /// <summary>The key in an address.</summary>
    public static string Key(string part) => part.Replace('~', '/');
}
