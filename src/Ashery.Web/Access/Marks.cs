namespace Ashery.Web.Access;

/// <summary>Marks an endpoint that is there only where there are accounts.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method)]
public sealed class AccountsOnlyAttribute : Attribute;

/// <summary>Marks an endpoint for everybody who is signed in, whether they belong to a garden or not.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method)]
public sealed class NoGardenNeededAttribute : Attribute;

/// <summary>Marks an endpoint where a reader may post: it changes nothing of the garden.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method)]
public sealed class ReadersMayAttribute : Attribute;

/// <summary>Marks what touches every garden of the database: backups, restores. Only for who keeps the installation.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method)]
public sealed class KeeperOnlyAttribute : Attribute;

/// <summary>Marks where a password or a code is tried: not often from one place.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method)]
public sealed class TriesAreCountedAttribute : Attribute;
