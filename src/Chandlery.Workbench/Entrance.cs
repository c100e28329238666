using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench;

/// <summary>
/// The keys to the page. Every account on the machine reaches its address; only who was given a key gets in, and a cookie remembers it.
/// </summary>
internal sealed class Entrance
{
    /// <summary>The query's field that a key comes in.</summary>
    public const string Field = "key";

    private const int SecretBytes = 32;
    private readonly string lasting = Secret();
    private string? once;

    /// <summary>The key that opens as long as the program runs.</summary>
    public string Key => lasting;

    /// <summary>
    /// A key that opens once, for a browser that is started with the address: what a program was started with, other accounts can
    /// read. A key that was made before and not used opens no more.
    /// </summary>
    public string MakeKeyForOnce()
    {
        string made = Secret();
        Interlocked.Exchange(ref once, made);
        return made;
    }

    /// <summary>Lets a browser in that brings a key, and gives it the cookie; false when the key is wrong.</summary>
    public bool Admit(HttpContext context, string offered)
    {
        string? single = Volatile.Read(ref once);
        bool admitted =
            Same(offered, lasting)
            || (single is not null && Same(offered, single) && Interlocked.CompareExchange(ref once, null, single) == single);
        if (admitted)
        {
            context.Response.Cookies.Append(
                CookieName(context),
                lasting,
                new CookieOptions
                {
                    HttpOnly = true,
                    SameSite = SameSiteMode.Strict,
                    Path = "/",
                }
            );
        }

        return admitted;
    }

    /// <summary>Whether the request comes from a browser that was let in.</summary>
    public bool Knows(HttpContext context) =>
        context.Request.Cookies.TryGetValue(CookieName(context), out string? brought) && Same(brought ?? "", lasting);

    // Browsers send cookies to every port of a host: two workbenches would overwrite each other's.
    private static string CookieName(HttpContext context) => $"workbench-{context.Connection.LocalPort}";

    private static bool Same(string one, string other) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));

    private static string Secret() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
}
