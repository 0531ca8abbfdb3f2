// Which random numbers belong to one purpose of one practice stove?
// Equation: seed = 32-bit FNV-1a of the key's UTF-8; numbers by xoshiro256**; normals by the inverse of Φ.
// Symbols: key pattern, seed, number of things done and purpose, joined with "/".
// Validity: two keys share a stream only when their hashes collide.
// Assumptions: what is drawn for one purpose moves no other draw, so learner and planner meet the same stove and the same answers.
// Source: FNV-1a, offset basis 2166136261, prime 16777619 (Fowler, Noll, Vo). From memory.
// Worked: FNV-1a of "a" is 0xE40C292C (the hash's published test vector).
using System.Text;
using Emberwright.Diagnosis.Inference;
using MathNet.Numerics.Random;

namespace Emberwright.Diagnosis.Practice;

/// <summary>Random numbers of one purpose, always the same for the same key.</summary>
internal sealed class Chance
{
    private readonly Xoshiro256StarStar _random;

    private Chance(uint seed) => _random = new Xoshiro256StarStar(unchecked((int)seed));

    /// <summary>The stream of a key.</summary>
    public static Chance Of(string key) => new(Hash(key));

    /// <summary>32-bit FNV-1a of a text in UTF-8.</summary>
    public static uint Hash(string text)
    {
        var hash = 2166136261u;
        foreach (var b in Encoding.UTF8.GetBytes(text)) hash = (hash ^ b) * 16777619u;
        return hash;
    }

    /// <summary>Evenly in 0…1, ends excluded.</summary>
    public double Unit() => Math.Clamp(_random.NextDouble(), 1e-12, 1 - 1e-12);

    /// <summary>Evenly between two values.</summary>
    public double Between(double low, double high) => low + (high - low) * Unit();

    /// <summary>True with a probability.</summary>
    public bool Happens(double probability) => Unit() < probability;

    /// <summary>Normal.</summary>
    public double Normal(double mean, double sd) => mean + sd * Inference.Normal.Quantile(Unit());

    /// <summary>Exponential.</summary>
    public double Exponential(double mean) => -mean * Math.Log(Unit());

    /// <summary>Index of one of the weights, in proportion to them.</summary>
    public int Pick(IReadOnlyList<double> weights)
    {
        var left = Unit() * weights.Sum();
        for (var k = 0; k < weights.Count - 1; k++)
        {
            if ((left -= weights[k]) < 0) return k;
        }

        return weights.Count - 1;
    }
}
