namespace Gatewright.Planning.Choosing;

/// <summary>
/// Groups that achieve something together: it is achieved when each has chosen one of the options that allow it, and
/// every two of them options that go together.
/// </summary>
/// <param name="Members">The groups, each once, and of each the options that allow it.</param>
/// <param name="Pairs">Which of their options go together; two groups without an entry go together whatever they choose.</param>
internal sealed record Bundle(IReadOnlyList<Member> Members, IReadOnlyList<Pair> Pairs);

/// <summary>A group's part in a bundle.</summary>
/// <param name="Group">Its place among the model's groups.</param>
/// <param name="Allowed">Of each option, whether it allows what the bundle achieves.</param>
internal sealed record Member(int Group, IReadOnlyList<bool> Allowed);

/// <summary>Which options of two groups go together.</summary>
/// <param name="First">A group of the bundle.</param>
/// <param name="Second">Another.</param>
/// <param name="Together">Of each option of the first, whether it goes with each option of the second.</param>
internal sealed record Pair(int First, int Second, IReadOnlyList<IReadOnlyList<bool>> Together);
