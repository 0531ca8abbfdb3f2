// Which random numbers belong to one draw of one hidden stove?
// Equation: seed = 32-bit FNV-1a hash of the key's text; numbers by xoshiro256**; normals by Box–Muller.
// Symbols: key pattern, seed, index and purpose of the draw, joined with "/".
// Validity: two keys give the same stream only when their 32-bit hashes collide.
// Assumptions: what is drawn for one purpose never moves another draw, so policies meet the same stove and the same answers.
// Source: FNV-1a, offset basis 2166136261, prime 16777619 (Fowler, Noll, Vo); Box & Muller 1958. From memory.
// Worked: FNV-1a of "a" is 0xE40C292C (the hash's published test vector).
using MathNet.Numerics.Random;

namespace Emberwright.Trials.Generator;

/// <summary>Random numbers of one purpose, always the same for the same key.</summary>
internal sealed class Chance
{
    private readonly Xoshiro256StarStar _random;

    private Chance(uint seed) => _random = new Xoshiro256StarStar(unchecked((int)seed));

    /// <summary>The stream of a key.</summary>
    public static Chance Of(params object[] key) => new(Hash(string.Join('/', key.Select(k => Convert.ToString(k, System.Globalization.CultureInfo.InvariantCulture)))));

    /// <summary>32-bit FNV-1a of a text in UTF-8.</summary>
    public static uint Hash(string text)
    {
        var hash = 2166136261u;
        foreach (var b in System.Text.Encoding.UTF8.GetBytes(text)) hash = (hash ^ b) * 16777619u;
        return hash;
    }

    /// <summary>Evenly in 0…1, ends excluded.</summary>
    public double Unit() => Math.Clamp(_random.NextDouble(), 1e-12, 1 - 1e-12);

    /// <summary>Evenly between two values.</summary>
    public double Between(double low, double high) => low + (high - low) * Unit();

    /// <summary>True with a probability.</summary>
    public bool Happens(double probability) => Unit() < probability;

    /// <summary>Normal.</summary>
    public double Normal(double mean = 0, double sd = 1) => mean + sd * Math.Sqrt(-2 * Math.Log(Unit())) * Math.Cos(2 * Math.PI * Unit());

    /// <summary>Exponential.</summary>
    public double Exponential(double mean) => -mean * Math.Log(Unit());

    /// <summary>Index of one of the weights, in proportion to them.</summary>
    public int Pick(IReadOnlyList<double> weights)
    {
        var left = Unit() * weights.Sum();
        for (var k = 0; k < weights.Count - 1; k++)
            if ((left -= weights[k]) < 0) return k;
        return weights.Count - 1;
    }
}
