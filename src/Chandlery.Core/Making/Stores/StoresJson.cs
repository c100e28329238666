using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Chandlery.Core.Making.Stores;

/// <summary>JSON of stores and costs, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(StoreReport))]
[JsonSerializable(typeof(CostReport[]))]
public sealed partial class StoresJson : JsonSerializerContext
{
    /// <summary>As written for people's eyes too: letters of other languages stay letters.</summary>
    public static StoresJson Plain { get; } =
        new(
            new JsonSerializerOptions
            {
                PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
                WriteIndented = true,
                Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            }
        );
}
