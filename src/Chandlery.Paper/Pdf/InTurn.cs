namespace Chandlery.Paper.Pdf;

/// <summary>Work on many things at once whose results are wanted in order.</summary>
internal static class InTurn
{
    /// <summary>
    /// Works on each thing, on all cores, and hands over what came of it in the order of the things, one after the other, as soon as it
    /// is there. Whoever calls works with the rest: where all threads of the pool call this at once, none waits for another to be made.
    /// </summary>
    /// <param name="things">The things.</param>
    /// <param name="work">What is done with each; several at once.</param>
    /// <param name="take">Takes what came of each; never two at once.</param>
    /// <exception cref="AggregateException">A work or its taking threw, where there are several things; of a single one it comes as it is.</exception>
    public static void Each<TThing, TResult>(IReadOnlyList<TThing> things, Func<TThing, TResult> work, Action<TResult> take)
        where TResult : class
    {
        // One label is one page: nobody is asked to help with it.
        if (things.Count == 1)
        {
            take(work(things[0]));
            return;
        }

        var done = new TResult?[things.Count];
        var taking = new Lock();
        int begun = 0;
        int taken = 0;
        Parallel.For(
            0,
            things.Count,
            _ =>
            {
                // Dealt out in their order, so that the first ones are there first.
                int i = Interlocked.Increment(ref begun) - 1;
                Volatile.Write(ref done[i], work(things[i]));
                Hand();
            }
        );
        Hand();

        // Whoever finds another at it leaves its own to that one, or to the end.
        void Hand()
        {
            if (!taking.TryEnter())
            {
                return;
            }

            try
            {
                while (taken < done.Length && Volatile.Read(ref done[taken]) is { } next)
                {
                    take(next);
                    done[taken++] = null;
                }
            }
            finally
            {
                taking.Exit();
            }
        }
    }
}
