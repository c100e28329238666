using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Chandlery.Workbench.Answers;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>Something that the page can ask of the program.</summary>
/// <param name="Method">GET or POST.</param>
/// <param name="Path">Its address.</param>
/// <param name="Answer">Makes the answer.</param>
internal sealed record Endpoint(string Method, string Path, Func<HttpContext, Task<IResult>> Answer)
{
    /// <summary>The longest body that is taken where nothing else is said, bytes.</summary>
    public const long LargestBody = 200_000;

    /// <summary>The longest body that this one takes, bytes.</summary>
    public long Largest { get; init; } = LargestBody;

    // Handlers take the request as it comes: binding of parameters needs reflection, which a program compiled ahead of time lacks.

    /// <summary>One that is asked with an address alone.</summary>
    public static Endpoint Get(string path, Func<IQueryCollection, IResult> work) =>
        new(HttpMethods.Get, path, context => Task.FromResult(Guarded(() => work(context.Request.Query))));

    /// <summary>One that is asked with JSON.</summary>
    public static Endpoint Post<T>(string path, JsonTypeInfo<T> type, Func<T, IResult> work)
        where T : class => Post(path, type, request => Task.FromResult(Guarded(() => work(request))));

    /// <summary>One that is asked with JSON, and takes its time.</summary>
    public static Endpoint Post<T>(string path, JsonTypeInfo<T> type, Func<T, Task<IResult>> work)
        where T : class =>
        new(
            HttpMethods.Post,
            path,
            async context =>
            {
                T? request;
                try
                {
                    request = await context.Request.ReadFromJsonAsync(type, context.RequestAborted);
                }
                catch (Exception error) when (error is JsonException or InvalidOperationException or BadHttpRequestException)
                {
                    request = null;
                }

                return request is null ? Complaint(StatusCodes.Status400BadRequest, "The request cannot be read.") : await work(request);
            }
        );

    /// <summary>One that is sent a form with files.</summary>
    /// <param name="path">Its address.</param>
    /// <param name="largestBytes">What all files together may have.</param>
    /// <param name="tooLarge">What is said when they have more.</param>
    /// <param name="work">Makes the answer of the form and its files.</param>
    public static Endpoint Files(
        string path,
        long largestBytes,
        string tooLarge,
        Func<IFormCollection, IReadOnlyList<(string Name, byte[] Content)>, IResult> work
    ) =>
        new(
            HttpMethods.Post,
            path,
            async context =>
            {
                IFormCollection form;
                try
                {
                    form = await context.Request.ReadFormAsync(context.RequestAborted);
                }
                catch (Exception error) when (error is InvalidDataException or InvalidOperationException or BadHttpRequestException)
                {
                    return Refused(tooLarge);
                }

                var files = new List<(string Name, byte[] Content)>();
                foreach (IFormFile file in form.Files)
                {
                    using var copy = new MemoryStream();
                    await file.CopyToAsync(copy, context.RequestAborted);
                    files.Add((System.IO.Path.GetFileName(file.FileName), copy.ToArray()));
                }

                return Guarded(() => work(form, files));
            }
        )
        {
            Largest = largestBytes + LargestBody,
        };

    /// <summary>An answer as JSON.</summary>
    public static IResult Json<T>(T value, JsonTypeInfo<T> type) => Results.Json(value, type);

    /// <summary>Why there is no answer.</summary>
    public static IResult Complaint(int status, params IReadOnlyList<string> what) =>
        Results.Json(new Complaint(what), PageJson.Default.Complaint, statusCode: status);

    /// <summary>The answer where what is asked for is not there.</summary>
    public static IResult Missing(string what) => Complaint(StatusCodes.Status404NotFound, what);

    /// <summary>The answer where what is asked for cannot be done as things are.</summary>
    public static IResult Refused(params IReadOnlyList<string> why) => Complaint(StatusCodes.Status422UnprocessableEntity, why);

    private static IResult Guarded(Func<IResult> work)
    {
        try
        {
            return work();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Complaint(StatusCodes.Status500InternalServerError, error.Message);
        }
    }
}
