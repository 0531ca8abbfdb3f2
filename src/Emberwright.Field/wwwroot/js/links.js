// A link that is touched shows so before anything else is done; the page it leads to is made once that has been painted.
// Links that .NET answers itself carry data-own. Until the app stands (data-kept is the page before it) a link is the browser's own.
addEventListener('click', event => {
    const link = event.target.closest?.('a[href]');
    if (!link || event.defaultPrevented || event.button || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    if (link.target || link.hasAttribute('download') || 'own' in link.dataset || !link.href.startsWith(document.baseURI) || document.querySelector('main[data-kept]')) return;
    event.preventDefault();
    event.stopPropagation();
    link.setAttribute('aria-busy', 'true');
    requestAnimationFrame(() => setTimeout(() => {
        link.removeAttribute('aria-busy');
        Blazor.navigateTo(link.href);
    }));
}, true);
