using System.Diagnostics.CodeAnalysis;
using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>Hands the terminal to the commands; everything else has a constructor without arguments.</summary>
internal sealed class Registrar(Terminal terminal) : ITypeRegistrar, ITypeResolver
{
    private readonly Dictionary<Type, Func<object>> known = new() { [typeof(Terminal)] = () => terminal };

    public ITypeResolver Build() => this;

    public void Register(Type service, [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicConstructors)] Type implementation) =>
        known[service] = () => Create(implementation);

    public void RegisterInstance(Type service, object implementation) => known[service] = () => implementation;

    public void RegisterLazy(Type service, Func<object> factory) => known[service] = factory;

    public object? Resolve(Type? type)
    {
        if (type is null) return null;
        if (known.TryGetValue(type, out var make)) return make();
        return type.IsAbstract || type.IsInterface ? null : Create(type);
    }

    private object Create([DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicConstructors)] Type type)
    {
        var constructor = type.GetConstructors().MinBy(c => c.GetParameters().Length)!;
        return constructor.Invoke([.. constructor.GetParameters().Select(p => Resolve(p.ParameterType))]);
    }
}
