using Gatewright.Architecture.Tests.Samples.Order.Early;

namespace Gatewright.Architecture.Tests.Samples.Order.Late;

public sealed class Last
{
    public static int Count => 3;

    public static bool Uses(InField early) => early is not null;
}
