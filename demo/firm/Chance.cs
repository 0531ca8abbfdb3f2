namespace Emberwright.DemoFirm;

/// <summary>Seeded chance: the same seed always gives the same year.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    public double Uniform(double low, double high) => low + (high - low) * random.NextDouble();

    public int Whole(int low, int high) => random.Next(low, high + 1);

    public bool Happens(double probability) => random.NextDouble() < probability;

    public double Normal(double mean, double sd) =>
        mean + sd * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    public double LogNormal(double median, double lnSd) => median * Math.Exp(Normal(0, lnSd));

    public T Of<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];

    public T Weighted<T>(IReadOnlyList<T> from, Func<T, double> weight)
    {
        var at = random.NextDouble() * from.Sum(weight);
        foreach (var item in from)
            if ((at -= weight(item)) <= 0) return item;
        return from[^1];
    }

    /// <summary>A UUID of version 7 for a time.</summary>
    public Guid Id(DateTimeOffset at)
    {
        var bytes = Guid.CreateVersion7(at).ToByteArray(bigEndian: true);
        random.NextBytes(bytes.AsSpan(8));
        bytes[6] = (byte)(0x70 | random.Next(16));
        bytes[7] = (byte)random.Next(256);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true);
    }
}
