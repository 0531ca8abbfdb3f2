namespace Emberwright.Stove.Patterns;

/// <summary>Ranges of healthy readings, written shortly; each from memory, no source.</summary>
internal static class Rate
{
    public static Rating FanOnly(Measure measure, string place, double low, double high) => At(Condition.FanOnly, measure, place, low, high);

    public static Rating Low(Measure measure, string place, double low, double high) => At(Condition.LowBurn, measure, place, low, high);

    public static Rating High(Measure measure, string place, double low, double high) => At(Condition.HighBurn, measure, place, low, high);

    private static Rating At(Condition condition, Measure measure, string place, double low, double high) =>
        new(new Observable(measure, place, condition), low, high, Origin.Memory);
}
