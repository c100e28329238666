using System.Diagnostics;
using System.Net;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;
using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Chandlery.Yaml;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Chandlery.Workbench;

/// <summary>The workbench: a page on this machine alone.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    private const long LargestRequestBytes = 200_000;
    private const string PageFolder = "page/";
    private readonly Entrance entrance = new();
    private readonly Lock saving = new();
    private readonly WebApplication application;
    private readonly Workroom room;

    private WorkbenchServer(WebApplication application, Workroom room)
    {
        this.application = application;
        this.room = room;
    }

    /// <summary>Address of the server, which lets nobody in by itself; there once it has started.</summary>
    public string Address => application.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();

    /// <summary>Address with the key that opens the page as long as the program runs.</summary>
    public string WayIn => With(entrance.Key);

    /// <summary>Address with a key that opens the page once, to start a browser with.</summary>
    public string WayInForOnce() => With(entrance.MakeKeyForOnce());

    private string With(string key) => $"{Address}/?{Entrance.Field}={key}";

    /// <summary>Starts the page.</summary>
    /// <param name="room">The opened folder.</param>
    /// <param name="port">Port on the loopback address; 0 for a free one.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<WorkbenchServer> Start(Workroom room, int port)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestRequestBytes;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16_384;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        WebApplication application = builder.Build();
        var server = new WorkbenchServer(application, room);
        application.Use(next => context => Guard.Check(context, server.entrance, next));
        server.Map();
        await application.StartAsync();
        return server;
    }

    /// <summary>Runs until the user stops the program.</summary>
    public Task WaitForShutdown() => application.WaitForShutdownAsync();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => application.DisposeAsync();

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Today);

    private void Map()
    {
        Get("/", _ => PageFile("workbench.html", "text/html; charset=utf-8"));
        foreach (string script in Scripts())
        {
            Get($"/{script}", _ => PageFile(script, "text/javascript; charset=utf-8"));
        }

        Get("/workbench.css", _ => PageFile("workbench.css", "text/css; charset=utf-8"));
        Get("/api/catalogue", _ => Answer(Catalogue(), PageJson.Default.CatalogueAnswer));
        Post("/api/desk", (desk, _) => Answer(Desk(desk), PageJson.Default.DeskAnswer));
        Get("/api/symbol", query => Symbol(query["name"].ToString()));
        Post("/api/save", Save);
        Post("/api/preview", Preview);
        Post("/api/paper", Paper);
        Post("/api/register", Enter);
        Get("/api/register", query => Answer(Entries(query["find"]), PageJson.Default.RegisterAnswer));
        Get("/api/changes", query => Changes(query["from"], query["to"]));
    }

    // Handlers take the request as it comes: binding of parameters needs reflection, which a program compiled ahead of time lacks.
    private void Get(string path, Func<IQueryCollection, IResult> work) =>
        application.MapGet(path, context => work(context.Request.Query).ExecuteAsync(context));

    private void Post(string path, Func<CandleDesk, DeskRequest, IResult> work) =>
        application.MapPost(
            path,
            async context =>
            {
                IResult result = await OnDesk(context, work);
                await result.ExecuteAsync(context);
            }
        );

    private static IResult Answer<T>(T value, JsonTypeInfo<T> type) => Results.Json(value, type);

    private static IResult Complaint(int status, string what) =>
        Results.Json(new Complaint([what]), PageJson.Default.Complaint, statusCode: status);

    private static IEnumerable<string> Scripts() =>
        typeof(WorkbenchServer)
            .Assembly.GetManifestResourceNames()
            .Where(n => n.EndsWith(".js", StringComparison.Ordinal))
            .Select(n => n[PageFolder.Length..]);

    private static IResult PageFile(string name, string type)
    {
        using Stream stream = typeof(WorkbenchServer).Assembly.GetManifestResourceStream(PageFolder + name)!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return Results.Bytes(copy.ToArray(), type);
    }

    private IResult Symbol(string name) =>
        room.Shop.Symbols.Has(name)
            ? Results.Text(
                SvgDrawing.Draw(
                    new Scene(SymbolSheet.Units, SymbolSheet.Units, [.. room.Shop.Symbols.Place(name, 0, 0, SymbolSheet.Units)], []),
                    name
                ),
                "image/svg+xml"
            )
            : Complaint(StatusCodes.Status404NotFound, "There is no such symbol.");

    private async Task<IResult> OnDesk(HttpContext context, Func<CandleDesk, DeskRequest, IResult> work)
    {
        DeskRequest? request;
        try
        {
            request = await context.Request.ReadFromJsonAsync(PageJson.Default.DeskRequest, context.RequestAborted);
        }
        catch (Exception error) when (error is JsonException or InvalidOperationException or BadHttpRequestException)
        {
            return Complaint(StatusCodes.Status400BadRequest, "The request cannot be read.");
        }

        if (request?.Id is null || CandleDesk.Lay(room, request.Id, request.Edits, Today) is not { } desk)
        {
            return Complaint(StatusCodes.Status404NotFound, "There is no candle of that name in the folder.");
        }

        try
        {
            return work(desk, request);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Complaint(StatusCodes.Status500InternalServerError, error.Message);
        }
    }

    private CatalogueAnswer Catalogue()
    {
        DeclarationFolder folder = room.Folder();
        IReadOnlyList<CatalogueEntry<CatalogueRow>> entries = CatalogueRun.Assess(
            folder.Catalogue,
            room.Lawbook,
            Today,
            null,
            CatalogueRow.Of
        );
        return new CatalogueAnswer(
            Path.GetFileName(room.Root),
            folder.Catalogue.OfKind<Maker>().FirstOrDefault()?.Name,
            [.. entries.SelectMany(e => e.Results)],
            [.. folder.Problems.Found.Concat(entries.SelectMany(e => e.Problems)).Select(Shown)]
        );
    }

    private string Shown(Problem problem) =>
        problem.ToString().Replace(room.Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);

    private DeskAnswer Desk(CandleDesk desk)
    {
        Assessment? first = desk.Assessments.Count > 0 ? desk.Assessments[0] : null;
        Wax? wax = first is null ? null : desk.Catalogue.Find<Wax>(first.Candle.Wax, new Problems());
        return new DeskAnswer(
            desk.Catalogue.OfKind<Maker>().FirstOrDefault()?.Name ?? Path.GetFileName(room.Root),
            desk.Id,
            desk.Hash,
            desk.Yaml,
            desk.Candle is not null,
            desk.Candle is { } candle ? Form(candle) : null,
            [.. desk.Catalogue.OfKind<Oil>().Select(o => new OilName(o.Id, o.Name, o.Density?.Value, o.DropMass?.Value))],
            first is null ? null : [.. first.Composition.Recipe.Oils.Select(o => Line(o, first.Candle.NetMass))],
            [.. desk.Assessments.Select(a => JsonElement.Parse(AssessmentJson.Write(a)))],
            DeskPapers.Offer(room.Papers, desk.Assessments),
            first is not null && wax is not null ? LoadPlot.Of(first, wax) : null,
            [.. desk.Problems.Select(p => OnForm(desk, p))]
        );
    }

    private DeskProblem OnForm(CandleDesk desk, Problem problem) =>
        FormFields.At(desk.Yaml, problem.Place) is { } field
            ? new DeskProblem($"{problem.What} {problem.Remedy}".TrimEnd(), field)
            : new DeskProblem(Shown(problem), null);

    private static CandleForm Form(Candle candle) =>
        new(
            candle.Name,
            candle.NetMass.Value,
            candle.Load?.Percent.Value,
            candle.Load is { } load ? (load.Basis == LoadBasis.Wax ? "wax" : "candle") : null,
            candle.WaxWeight?.Value,
            CandleDesk.OilsOf(candle),
            candle.Wicks.Count
        );

    private static RecipeLine Line(OilShare share, Grams net)
    {
        double grams = share.Share.Value / 100 * net.Value;
        return new RecipeLine(
            share.Oil.Id,
            share.Oil.Name,
            share.ShareOfBlend.Value,
            share.Share.Value,
            grams,
            share.Oil.Density is { } density ? grams / density.Value : null,
            share.Oil.DropMass is { } drop ? grams / drop.Value : null
        );
    }

    // Two saves from one base: the second must see what the first wrote.
    private IResult Save(CandleDesk desk, DeskRequest request)
    {
        lock (saving)
        {
            if (desk.Hash != request.Hash || HashOnDisk(desk.File) != request.Hash)
            {
                return Complaint(
                    StatusCodes.Status409Conflict,
                    "The file was changed on disk since you opened it. Nothing was saved. Load it again, with or without your changes."
                );
            }

            if (desk.Problems.Count > 0 || desk.Candle is null)
            {
                return Complaint(StatusCodes.Status422UnprocessableEntity, "Not saved, because of the problems shown.");
            }

            AtomicFile.Write(desk.File, desk.Yaml);
        }

        return Answer(new SavedAnswer(RegisterFile.Sha256(desk.Yaml)), PageJson.Default.SavedAnswer);
    }

    private static string? HashOnDisk(string file) =>
        TextFile.Read(file, Path.GetFileName(file), new Problems()) is { } text ? RegisterFile.Sha256(text) : null;

    private static Assessment? Chosen(CandleDesk desk, DeskRequest request) =>
        desk.Assessments.FirstOrDefault(a => a.Edition.Id == request.Edition) ?? (desk.Assessments.Count > 0 ? desk.Assessments[0] : null);

    private Parsed<MadePaper> Made(CandleDesk desk, DeskRequest request)
    {
        PaperKind? paper = request.Kind is { } kind ? room.Papers.Find(kind) : room.Papers.All[0];
        if (paper is null)
        {
            return Parsed.Not<MadePaper>("There is no such paper.");
        }

        if (Chosen(desk, request) is not { } a)
        {
            return Parsed.Not<MadePaper>("The candle cannot be assessed; see the problems.");
        }

        return DeskPapers.Make(room, desk, a, paper, request) switch
        {
            MadePaper made => Parsed.As(made),
            MissingPaper missing => Parsed.Not<MadePaper>(DeskPapers.Sentence(paper, missing)),
            _ => throw new UnreachableException(),
        };
    }

    private IResult Preview(CandleDesk desk, DeskRequest request)
    {
        Parsed<MadePaper> made = Made(desk, request);
        PreviewAnswer answer = made.Success
            ? new PreviewAnswer([.. PreviewPages(made.Value.Document)], made.Value.Warnings, null)
            : new PreviewAnswer([], [], made.Reason);
        return Answer(answer, PageJson.Default.PreviewAnswer);
    }

    private static IEnumerable<PreviewPage> PreviewPages(PaperDocument document) =>
        document.Pages.Select(p => new PreviewPage(p.WidthMm, p.HeightMm, SvgDrawing.Draw(p, document.Title)));

    private IResult Paper(CandleDesk desk, DeskRequest request)
    {
        switch (request.Format)
        {
            case "yaml":
                return Results.Text(desk.Yaml, "application/yaml; charset=utf-8");
            case "json":
                return Results.Text(AssessmentJson.Write(desk.Assessments), "application/json; charset=utf-8");
            default:
                Parsed<MadePaper> made = Made(desk, request);
                if (!made.Success)
                {
                    return Complaint(StatusCodes.Status422UnprocessableEntity, made.Reason);
                }

                (byte[] bytes, string type) = DeskPapers.Draw(made.Value.Document, request.Format ?? "pdf");
                return Results.Bytes(bytes, type);
        }
    }

    private string RegisterPath => Path.Combine(room.Root, RegisterWriter.FileName);

    private IResult Enter(CandleDesk desk, DeskRequest request)
    {
        if (request.Edits is not null)
        {
            return Complaint(StatusCodes.Status422UnprocessableEntity, "Save the changes first: the register keeps what is in the files.");
        }

        if (string.IsNullOrWhiteSpace(request.By) || request.By.Length > 100)
        {
            return Complaint(StatusCodes.Status422UnprocessableEntity, "Say who issues the label.");
        }

        if (Chosen(desk, request) is not { StopsSale: false } a)
        {
            return Complaint(StatusCodes.Status422UnprocessableEntity, "Something stops the sale, so nothing was entered.");
        }

        var documents = new List<(string Name, byte[] Bytes)>();
        foreach (PaperKind paper in room.Papers.Registered)
        {
            switch (DeskPapers.Make(room, desk, a, paper, request))
            {
                case MissingPaper missing:
                    return Complaint(StatusCodes.Status422UnprocessableEntity, DeskPapers.Sentence(paper, missing));
                case MadePaper made:
                    documents.Add(($"{paper.FileName(a, a.Languages[0])}.pdf", PdfDrawing.Draw(made.Document)));
                    break;
            }
        }

        var problems = new Problems();
        (RegisterContent content, IReadOnlyDictionary<string, string> texts) = RegisterWriter.Content(
            a,
            room.Root,
            desk.Catalogue,
            documents,
            problems
        );
        if (!problems.None)
        {
            return Complaint(StatusCodes.Status422UnprocessableEntity, string.Join(' ', problems.Found.Select(Shown)));
        }

        using RegisterFile register = RegisterFile.Open(RegisterPath);
        RegisterEntry entry = register.Add(content, texts, request.By.Trim(), DateTimeOffset.UtcNow);
        return Answer(new EnteredAnswer(entry.Number, entry.Hash), PageJson.Default.EnteredAnswer);
    }

    private RegisterAnswer Entries(string? find)
    {
        if (!File.Exists(RegisterPath))
        {
            return new RegisterAnswer([], []);
        }

        try
        {
            using RegisterFile register = RegisterFile.OpenToRead(RegisterPath);
            bool isSearch = !string.IsNullOrWhiteSpace(find);
            var damaged = new SortedSet<long>();
            IEnumerable<RegisterLine> Found(RegisterQuery query) => register.Stream(query, n => damaged.Add(n)).Select(Line);
            IReadOnlyList<RegisterLine> lines = isSearch
                ?
                [
                    .. Found(new RegisterQuery(Batch: find))
                        .Concat(Found(new RegisterQuery(Substance: find)))
                        .Concat(Found(new RegisterQuery(Oil: find)))
                        .Concat(Found(new RegisterQuery(Document: find)))
                        .DistinctBy(l => l.Number)
                        .OrderBy(l => l.Number),
                ]
                : [.. Found(new RegisterQuery())];

            // The whole is checked when the page opens, not with every search.
            return new RegisterAnswer(
                lines,
                isSearch ? [.. damaged.Select(n => $"entry {n} is damaged and was left out")] : [.. register.Verify()]
            );
        }
        catch (IOException error)
        {
            return new RegisterAnswer([], [error.Message]);
        }
    }

    private static RegisterLine Line(RegisterEntry e) =>
        new(
            e.Number,
            e.At,
            e.By,
            e.Content.Batch,
            e.Content.Candle,
            $"{e.Content.Edition}, {e.Content.AsOf}",
            [.. e.Content.Oils.Select(o => $"{o.Name} ({o.Document}, {o.Revised})")],
            [.. e.Content.Documents.Select(d => d.Name)]
        );

    private IResult Changes(string? from, string? to)
    {
        Parsed<DateOnly> before = IsoDay.Parse(from);
        Parsed<DateOnly> after = IsoDay.Parse(to);
        if (!before.Success || !after.Success)
        {
            return Complaint(StatusCodes.Status200OK, "Write both days as year-month-day.");
        }

        Catalogue catalogue = room.Folder().Catalogue;
        IReadOnlyList<CandleChange> changes = StateComparison.Compare(
            CatalogueRun.Assess(catalogue, room.Lawbook, before.Value, null, CandleState.Of),
            CatalogueRun.Assess(catalogue, room.Lawbook, after.Value, null, CandleState.Of)
        );
        return Answer(new ChangesAnswer(changes), PageJson.Default.ChangesAnswer);
    }
}
