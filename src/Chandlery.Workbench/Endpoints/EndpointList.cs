namespace Chandlery.Workbench.Endpoints;

/// <summary>All that the page can ask of the program.</summary>
internal static class EndpointList
{
    public static IReadOnlyList<Endpoint> Of(Rooms rooms, PhoneDoor door, Entrance entrance) =>
        [
            .. PageEndpoints.All(),
            WordsEndpoint.Of(rooms),
            ShapesEndpoint.Of(rooms),
            BeginEndpoint.Of(rooms),
            FolderEndpoint.Of(rooms),
            CandlesEndpoint.Of(rooms),
            DeskEndpoint.Of(rooms),
            DesignsEndpoint.Of(rooms),
            PreviewEndpoint.Of(rooms),
            PaperEndpoint.Of(rooms),
            LabelSheetEndpoint.Of(rooms),
            DutiesEndpoint.Of(rooms),
            ListingEndpoint.Of(rooms),
            SymbolEndpoint.Of(rooms),
            FormEndpoint.Of(rooms),
            KeepEndpoint.Of(rooms),
            StepEndpoint.Of(rooms),
            FileEndpoint.Of(rooms),
            HistoryEndpoint.Of(rooms),
            HistoryEndpoint.Text(rooms),
            AttachEndpoint.Of(rooms),
            SheetsEndpoint.Of(rooms),
            SheetEndpoint.Of(rooms),
            AnswerEndpoint.Of(rooms),
            NotebookEndpoint.Of(rooms),
            BenchEndpoint.Of(rooms),
            PhoneEndpoint.Of(door, entrance),
            EnterEndpoint.Of(rooms),
            RegisterEndpoint.Of(rooms),
            RegisterEndpoint.File(rooms),
            RegisterEndpoint.Rebuild(rooms),
            DeclarationTextEndpoint.Of(rooms),
            RecallEndpoint.Of(rooms),
            ChangesEndpoint.OfDays(rooms),
            ChangesEndpoint.OfDeclaration(rooms),
        ];
}
