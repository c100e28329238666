using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Chandlery.Core.Making;

/// <summary>JSON of what the bench is told, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(BenchLine[]))]
[JsonSerializable(typeof(WickLine[]))]
public sealed partial class MakingJson : JsonSerializerContext
{
    /// <summary>As written for people's eyes too: letters of other languages stay letters.</summary>
    public static MakingJson Plain { get; } =
        new(
            new JsonSerializerOptions
            {
                PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
                WriteIndented = true,
                Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            }
        );
}
