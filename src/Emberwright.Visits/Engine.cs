using System.Reflection;

namespace Emberwright.Visits;

/// <summary>The engine that computes: Stove, Diagnosis and Visits are released together under one version.</summary>
public static class Engine
{
    /// <summary>Version, as a sealed visit keeps it, e.g. <c>0.1.0</c>.</summary>
    public static string Version { get; } =
        typeof(Engine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";
}
