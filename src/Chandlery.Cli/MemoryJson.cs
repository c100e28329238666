using System.Text.Json.Serialization;

namespace Chandlery.Cli;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(MemoryReport[]))]
internal sealed partial class MemoryJson : JsonSerializerContext;
