import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css'
import '#web/styles/colours.css'
import '#web/styles/base.css'
import '#web/styles/shell.css'
import '#web/styles/parts.css'
import '#web/styles/desk.css'
import '#web/styles/print.css'
import { watchStanding } from '#web/access.ts'
import { App } from '#web/app.tsx'
import { keepApp } from '#web/keep/offline.ts'
import { openShop } from '#web/shop-store.ts'

createRoot(document.getElementById('app')!).render(<StrictMode><App /></StrictMode>)
watchStanding()
void openShop()
void keepApp()
