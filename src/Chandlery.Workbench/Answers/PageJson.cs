using System.Text.Json;
using System.Text.Json.Serialization;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Chandlery.Workbench.Sheets;

namespace Chandlery.Workbench.Answers;

/// <summary>JSON between page and program, made at build time.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(AnswerRequest))]
[JsonSerializable(typeof(BeginRequest))]
[JsonSerializable(typeof(DesignsRequest))]
[JsonSerializable(typeof(DeskRequest))]
[JsonSerializable(typeof(EnterRequest))]
[JsonSerializable(typeof(FileRequest))]
[JsonSerializable(typeof(FormRequest))]
[JsonSerializable(typeof(NotebookRequest))]
[JsonSerializable(typeof(LabelSheetRequest))]
[JsonSerializable(typeof(PhoneRequest))]
[JsonSerializable(typeof(RebuildRequest))]
[JsonSerializable(typeof(RecallRequest))]
[JsonSerializable(typeof(StepRequest))]
[JsonSerializable(typeof(AttachedAnswer))]
[JsonSerializable(typeof(BenchAnswer))]
[JsonSerializable(typeof(CandlesAnswer))]
[JsonSerializable(typeof(ChangesAnswer))]
[JsonSerializable(typeof(Complaint))]
[JsonSerializable(typeof(DesignsAnswer))]
[JsonSerializable(typeof(DeskAnswer))]
[JsonSerializable(typeof(DraftedAnswer))]
[JsonSerializable(typeof(DutiesAnswer))]
[JsonSerializable(typeof(EnteredAnswer))]
[JsonSerializable(typeof(FolderAnswer))]
[JsonSerializable(typeof(FormAnswer))]
[JsonSerializable(typeof(HistoryAnswer))]
[JsonSerializable(typeof(KeptAnswer))]
[JsonSerializable(typeof(KeptChange))]
[JsonSerializable(typeof(ListingAnswer))]
[JsonSerializable(typeof(NotebookAnswer))]
[JsonSerializable(typeof(PhoneAnswer))]
[JsonSerializable(typeof(PreviewAnswer))]
[JsonSerializable(typeof(RecallAnswer))]
[JsonSerializable(typeof(RegisterAnswer))]
[JsonSerializable(typeof(ShapesAnswer))]
[JsonSerializable(typeof(SheetAnswer))]
internal sealed partial class PageJson : JsonSerializerContext;
