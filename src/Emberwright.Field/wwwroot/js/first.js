// The first screen as it was last seen, shown at once while the app starts behind it. It is a picture of the list with
// living links: the app puts the real one in its place. It lies outside the store because that can be read without waiting.
{
    const home = location.pathname === new URL(document.baseURI).pathname;
    let kept = null;
    try { kept = home && localStorage.getItem('first-screen'); } catch { }
    if (kept) {
        const main = document.querySelector('#app main');
        main.insertAdjacentHTML('afterend', kept);
        main.remove();
    }
}
