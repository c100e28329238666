using System.Text.Json.Serialization;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>JSON of comparisons, made at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(CatalogueRow[]))]
[JsonSerializable(typeof(CandleChange[]))]
public sealed partial class ComparedJson : JsonSerializerContext;
