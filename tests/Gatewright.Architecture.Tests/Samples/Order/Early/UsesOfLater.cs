using Gatewright.Architecture.Tests.Samples.Order.Late;

namespace Gatewright.Architecture.Tests.Samples.Order.Early;

public sealed class InField(Last last)
{
    private readonly Last _last = last;

    public override string ToString() => _last.ToString()!;
}

public static class InBody
{
    public static int Twice() => 2 * Last.Count;
}

public static class InLambda
{
    public static Func<int> Twice() => () => 2 * Last.Count;
}

public static class InIterator
{
    public static IEnumerable<int> Twice()
    {
        yield return 2 * Last.Count;
    }
}

public static class AsArgumentOfAGeneric
{
    public static int Count(IReadOnlyList<Last> all) => all.Count;
}

public static class InANestedType
{
    private static class Inner
    {
        public static int Twice() => 2 * Last.Count;
    }

    public static int Twice() => Inner.Twice();
}
