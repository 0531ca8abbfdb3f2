using System.Text.Json.Serialization;
using Emberwright.Trials.Calibration;

namespace Emberwright.Trials;

/// <summary>How rows are written.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(CalibrationRow))]
internal sealed partial class TrialJson : JsonSerializerContext;
