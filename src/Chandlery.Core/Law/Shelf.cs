using System.Collections;

namespace Chandlery.Core.Law;

/// <summary>
/// Things of the law by code, in the order of their codes. Each is read when it is first asked for: there are many languages and
/// editions, and most runs need one of each.
/// </summary>
/// <typeparam name="T">What stands on the shelf.</typeparam>
/// <param name="codes">The codes.</param>
/// <param name="read">Reads the thing of a code.</param>
/// <param name="reading">
/// Held while a thing is read: the same for all shelves whose reading asks another shelf, or two threads could wait for each other.
/// </param>
public sealed class Shelf<T>(IReadOnlyList<string> codes, Func<string, T> read, Lock reading) : IReadOnlyList<T>
    where T : class
{
    private readonly T?[] things = new T?[codes.Count];

    /// <summary>The codes; asking for them reads nothing.</summary>
    public IReadOnlyList<string> Codes => codes;

    /// <inheritdoc/>
    public int Count => things.Length;

    /// <inheritdoc/>
    public T this[int index] => Volatile.Read(ref things[index]) ?? ReadOnce(index);

    /// <summary>The thing with this code, or null.</summary>
    public T? Find(string code)
    {
        for (int i = 0; i < things.Length; i++)
        {
            if (codes[i] == code)
            {
                return this[i];
            }
        }

        return null;
    }

    /// <summary>Reads everything that was not read yet.</summary>
    public void ReadAll()
    {
        for (int i = 0; i < things.Length; i++)
        {
            _ = this[i];
        }
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => Enumerable.Range(0, things.Length).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    // Candles are assessed on several threads.
    private T ReadOnce(int index)
    {
        lock (reading)
        {
            return things[index] ??= read(codes[index]);
        }
    }
}
