using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Chandlery.Core.Asked.Trials;

/// <summary>JSON of trials, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(TrialLine[]))]
[JsonSerializable(typeof(BlendLine[]))]
public sealed partial class TrialJson : JsonSerializerContext
{
    /// <summary>As written for people's eyes too: letters of other languages stay letters.</summary>
    public static TrialJson Plain { get; } =
        new(
            new JsonSerializerOptions
            {
                PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
                WriteIndented = true,
                Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            }
        );
}
