using System.Text.Json;
using System.Text.Json.Serialization;

namespace Chandlery.Workbench.Answers;

/// <summary>JSON between page and program, made at build time.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(DeskRequest))]
[JsonSerializable(typeof(Complaint))]
[JsonSerializable(typeof(CatalogueAnswer))]
[JsonSerializable(typeof(DeskAnswer))]
[JsonSerializable(typeof(SavedAnswer))]
[JsonSerializable(typeof(PreviewAnswer))]
[JsonSerializable(typeof(EnteredAnswer))]
[JsonSerializable(typeof(RegisterAnswer))]
[JsonSerializable(typeof(ChangesAnswer))]
internal sealed partial class PageJson : JsonSerializerContext;
